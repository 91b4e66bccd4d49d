// Legs of a course as the debrief gives them: way made good and seconds lost over time, read off between their points.

/**
 * @param {any} report debrief/1
 * @param {any} boat one of its boats
 * @returns {{number: number, kind: string, end: string|null, ended: boolean, from: number, to: number, length: number, step: number, made: (number|null)[], lost: number[], total: number}[]}
 */
export function legsOf(report, boat) {
  const start = Date.parse(report.start_utc) / 1000;
  return boat.legs.filter((leg) => leg.strip).map((leg) => ({
    number: leg.leg,
    kind: leg.kind,
    end: leg.to,
    ended: leg.ended,
    from: start + leg.start_s,
    to: start + leg.start_s + leg.duration_s,
    length: leg.distance_m,
    step: leg.strip.step_s,
    made: leg.strip.made_m,
    lost: leg.strip.lost_s,
    total: boat.ledger.find((one) => one.leg === leg.leg)?.total_s ?? leg.strip.lost_s.at(-1) ?? 0,
  }));
}

/** The leg that is sailed at an instant, or null. */
export const legAt = (legs, instant) => legs.find((leg) => instant >= leg.from && instant < leg.to) ?? null;

/** Seconds lost from the leg's begin to an instant on it. */
export const lostAt = (leg, instant) => between(leg.lost, (instant - leg.from) / leg.step);

/** Way made good along the leg at an instant on it, null in a gap. */
export const madeAt = (leg, instant) => between(leg.made, (instant - leg.from) / leg.step);

/** The instant at which a leg was as far along as that: of several the first after which it stays there. */
export function instantAt(leg, made) {
  for (let i = leg.made.length - 1; i > 0; i--) {
    const before = leg.made[i - 1];
    const after = leg.made[i];
    if (before !== null && after !== null && before <= made && after > before) {
      return leg.from + leg.step * (i - 1 + Math.min(1, (made - before) / (after - before)));
    }
  }
  return leg.from;
}

function between(values, at) {
  if (!values.length) return null;
  const i = Math.max(0, Math.min(values.length - 1, Math.floor(at)));
  const next = values[Math.min(values.length - 1, i + 1)];
  const here = values[i];
  return here === null || next === null ? null : here + (next - here) * Math.max(0, Math.min(1, at - i));
}
