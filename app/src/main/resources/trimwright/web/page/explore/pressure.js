// Pressure along the chord at the three heights of the drawing, by the flow computed about each section. That takes a
// moment, so it is asked for when the hand is at rest and the picture is on the screen.
import { html, useEffect, useRef, useState } from '../dom.js';
import { getJson, query } from '../api.js';
import { fixed } from '../format.js';
import { t } from '../text.js';
import { useSize } from '../hooks.js';
import { ticksOf } from './axis.js';
import { questionOf } from './inputs.js';
import { Term } from './number.js';

const LEFT = 34;
const RIGHT = 6;
const TOP = 8;
const BOTTOM = 20;
/** Suction beyond this is cut off: an ideal fluid's at a sharp nose knows no end. */
const MOST_SUCTION = -12;
const PLACES = ['foot', 'middle', 'head'];

/**
 * One question on its way at a time, then the newest: an answer takes the server a while even if nobody waits for it.
 *
 * @param {boolean} isSeen whether to ask at all
 * @returns {{sections: any[]|null, reason: string|null, fault: Error|null, isNow: boolean}} what was last computed
 */
function usePressures(boat, wing, state, strip, isSeen) {
  const [answer, setAnswer] = useState({ sections: null, reason: null, path: null, fault: null });
  const line = useRef({ busy: false, wanted: null, closed: false });
  const path = `/api/explore/pressure${query({ boat: boat.id, hash: boat.hash, wing: wing.id, strip, ...questionOf(state) })}`;
  useEffect(() => () => { line.current.closed = true; }, []);
  useEffect(() => {
    if (!isSeen) return;
    line.current.wanted = path;
    ask(line.current, setAnswer);
  }, [path, isSeen]);
  return { ...answer, isNow: answer.path === path };
}

async function ask(line, show) {
  if (line.busy) return;
  line.busy = true;
  for (let path = null; path !== line.wanted && !line.closed; ) {
    path = line.wanted;
    let found;
    try {
      const { pressures = null, reason = null } = await getJson(path);
      found = { sections: pressures, reason, path, fault: null };
    } catch (fault) {
      found = { sections: null, reason: null, path, fault };
    }
    if (!line.closed) show(found);
  }
  line.busy = false;
}

/** Whether an element is on the screen. */
function useSeen(ref) {
  const [isSeen, setSeen] = useState(false);
  useEffect(() => {
    const watch = new IntersectionObserver((entries) => setSeen(entries.at(-1).isIntersecting));
    watch.observe(ref.current);
    return () => watch.disconnect();
  }, []);
  return isSeen;
}

/** state: where the hand last came to rest; isMoving: it has moved on since. */
export function Pressure({ boat, wing, state, strip, isMoving }) {
  const panel = useRef(null);
  const { sections, reason, fault, isNow } = usePressures(boat, wing, state, strip, useSeen(panel));
  const old = !isNow || isMoving;
  const said = fault?.message ?? reason ?? t('web.explore.pressure_note');
  return html`
    <section class="panel pressure-panel" ref=${panel} aria-labelledby="pressure-title" data-shown=${old ? 'before' : 'now'}>
      <h2 id="pressure-title">${t('web.explore.pressure')}</h2>
      <p class="quiet" role="status">${old ? t('web.explore.pressure_work') : said}</p>
      <div class=${old ? 'pressures old' : 'pressures'}>${sections?.map((section, i) => html`<${Section} key=${PLACES[i]} section=${section} index=${i} />`)}</div>
    </section>`;
}

function Section({ section, index }) {
  const [ref, size] = useSize();
  return html`
    <figure class=${`pressure ${PLACES[index]}`}>
      <div class="plot" ref=${ref}>${section.elements && size.width > 90 && html`<${Curves} section=${section} size=${size} />`}</div>
      <figcaption><span class="swatch"></span>${t('web.explore.up', { height: fixed(section.height_above_foot_m) })}${section.fluid && html`, <b>${t(`web.explore.fluid.${section.fluid}`)}</b>;${' '}
        <${Term} name="lift_coefficient">${t('web.explore.cl_there')}<//> <${Coefficient} value=${section.lift_coefficient} path=${`${index}.lift_coefficient`} />
        ${' '}(${t('web.explore.wing_there')} <${Coefficient} value=${section.wing_lift_coefficient} path=${`${index}.wing_lift_coefficient`} />)${lost(section)}`}
        ${section.reason && html`<span class="quiet"> ${section.reason}</span>`}</figcaption>
    </figure>`;
}

/** Lift that the layers take from the ideal fluid's. */
const lost = ({ lift_lost_ratio: ratio }) => (ratio === undefined ? '' : `; ${t('web.explore.lift_lost', { percent: fixed(100 * ratio, 0) })}`);

const Coefficient = ({ value, path }) => html`<span class="number" data-pressure=${path} data-decimals="2">${fixed(value, 2)}</span>`;

function Curves({ section, size }) {
  const all = section.elements.flatMap((one) => one.pressure_coefficient);
  const least = Math.max(MOST_SUCTION, Math.min(-1, ...all)) * 1.05;
  const x = (share) => LEFT + share * (size.width - LEFT - RIGHT);
  // Suction up, as it lifts.
  const y = (pressure) => TOP + ((Math.max(pressure, least) - least) / (1.1 - least)) * (size.height - TOP - BOTTOM);
  const lineOf = ({ x_ratio: places, pressure_coefficient: pressures }) => places.map((place, i) => `${i ? 'L' : 'M'}${x(place).toFixed(1)} ${y(pressures[i]).toFixed(1)}`).join('');
  return html`
    <svg width=${size.width} height=${size.height} role="img" aria-label=${t('web.explore.pressure_label', { height: fixed(section.height_above_foot_m) })}>
      ${ticksOf(least, 1, size.height / 34).map((value) => html`
        <line class=${value === 0 ? 'zero' : 'grid'} x1=${LEFT} x2=${size.width - RIGHT} y1=${y(value)} y2=${y(value)} />
        <text class="tick" x=${LEFT - 5} y=${y(value) + 4} text-anchor="end">${String(value).replace('-', '\u2212')}</text>`)}
      ${[0, 0.5, 1].map((share) => html`<text class="tick" x=${x(share)} y=${size.height - 5} text-anchor=${{ 0: 'start', 1: 'end' }[share] ?? 'middle'}>${share * 100} %</text>`)}
      ${section.elements.map((one, i) => html`<path class=${i ? 'curve flap' : 'curve main'} d=${lineOf(one)} />`)}
    </svg>`;
}
