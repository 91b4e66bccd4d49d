// Runs of the weeks past, kept in this browser.
const KEPT = 'trimwright.practice.runs';
const MOST = 400;

export function remember(setup, found) {
  const all = runs();
  all.push({ when: new Date().toISOString(), drill: setup.drill, boat: setup.boat, wing: setup.wing, tws: setup.tws_kn, waves: setup.waves, mine: setup.mine.join(','), lost: found.lost_s, seconds: found.seconds_s, end: found.end });
  localStorage.setItem(KEPT, JSON.stringify(all.slice(-MOST)));
}

export const runs = () => JSON.parse(localStorage.getItem(KEPT) ?? '[]');

/** Earlier runs that can be compared: the same drill, boat and wing in waves as high, in the same hands. */
export const alike = (setup, mine) => runs().filter((one) => one.drill === setup.drill && one.boat === setup.boat && one.wing === setup.wing && (one.waves ?? 0) === setup.waves && one.mine === mine.join(','));
