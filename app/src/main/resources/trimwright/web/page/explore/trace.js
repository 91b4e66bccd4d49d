// Where the wing has been: each state that was shown is a point. A click on a rest goes back to it.
import { html, useCallback, useEffect, useMemo, useRef, useState } from '../dom.js';
import { fixed } from '../format.js';
import { t } from '../text.js';
import { useSize } from '../hooks.js';
import { endsOf, ticksOf } from './axis.js';

const MOST = 400;
/** A point may be so late (ms): chosen, so that most frames of a moving slider are the numbers' and the sections'. */
const LATE_MILLIS = 120;
const LEFT = 44;
const RIGHT = 14;
const TOP = 12;
const BOTTOM = 36;
const VIEWS = {
  heel: { x: 'heeling_moment_nm', y: 'drive_force_n' },
  polar: { x: 'drag_n', y: 'lift_n' },
};

/** Points so far: {state, wing's four numbers, rest}. A rest is where the hand stopped. New ones are shown a few at a time. */
export function useTrace(answer, steps) {
  const [points, setPoints] = useState([]);
  const waiting = useRef({ points: [], timer: 0 });
  useEffect(() => {
    if (!answer.wing) return;
    const point = { state: answer.state };
    for (const { x, y } of Object.values(VIEWS)) {
      point[x] = answer.wing[x];
      point[y] = answer.wing[y];
    }
    const late = waiting.current;
    late.points.push(point);
    late.timer ||= setTimeout(() => {
      const added = late.points;
      waiting.current = { points: [], timer: 0 };
      setPoints((old) => [...old, ...added].slice(-MOST - 1));
    }, LATE_MILLIS);
  }, [answer.wing]);
  useEffect(() => () => clearTimeout(waiting.current.timer), []);
  const rests = useMemo(() => new Set([...steps.past, steps.base]), [steps.past, steps.base]);
  const rested = useMemo(() => points.map((point) => ({ ...point, rest: rests.has(point.state) })), [points, rests]);
  const clear = useCallback(() => setPoints((old) => old.slice(-1)), []);
  return [rested, clear];
}

export function Trace({ points, targets, onGo, onClear }) {
  const [ref, size] = useSize();
  const [view, setView] = useState('heel');
  const [over, setOver] = useState(null);
  const seen = useRef({});
  const { x, y } = VIEWS[view];
  const shown = points.map((point) => ({ ...point, x: point[x] / 1000, y: point[y] / 1000 }));
  return html`
    <section class="panel trace-panel" aria-labelledby="trace-title">
      <div class="trace-head"><h2 id="trace-title">${t('web.explore.trace')}</h2>
        <span class="views">${Object.keys(VIEWS).map((one) => html`<button class="small" aria-pressed=${one === view ? 'true' : 'false'} onClick=${() => setView(one)}>${t(`web.explore.view.${one}`)}</button>`)}
        <button class="small" onClick=${() => { seen.current = {}; onClear(); }}>${t('web.explore.clear')}</button></span></div>
      <div class="plot" ref=${ref}>${size.width > 150 && shown.length > 0 && html`
        <${Picture} points=${shown} size=${size} view=${view} seen=${seen.current} targets=${targets} onOver=${setOver} onGo=${onGo} />`}</div>
      <p class="quiet readout">${over ? readout(view, over) : t('web.explore.trace_note')}</p>
    </section>`;
}

function Picture({ points, size, view, seen, targets, onOver, onGo }) {
  const known = (seen[view] = seen[view] ?? { x: [], y: [] });
  const scaleOf = (name, from, to) => {
    const [low, high] = endsOf([...points.map((point) => point[name]), ...known[name]]);
    known[name] = [low < 0 ? low / 1.06 : 0, high / 1.06];
    return { low, high, at: (value) => from + ((value - low) / (high - low)) * (to - from) };
  };
  const across = scaleOf('x', LEFT, size.width - RIGHT);
  const up = scaleOf('y', size.height - BOTTOM, TOP);
  const place = (point) => `${across.at(point.x).toFixed(1)} ${up.at(point.y).toFixed(1)}`;
  const now = points.at(-1);
  return html`
    <svg width=${size.width} height=${size.height} role="img" aria-label=${t('web.explore.trace_label')}>
      ${ticksOf(across.low, across.high, (size.width - LEFT) / 64).map((value) => html`
        <line class=${value === 0 ? 'zero' : 'grid'} x1=${across.at(value)} x2=${across.at(value)} y1=${TOP} y2=${size.height - BOTTOM} />
        <text class="tick" x=${across.at(value)} y=${size.height - BOTTOM + 14} text-anchor="middle">${String(value).replace('-', '\u2212')}</text>`)}
      ${ticksOf(up.low, up.high, (size.height - BOTTOM) / 40).map((value) => html`
        <line class=${value === 0 ? 'zero' : 'grid'} x1=${LEFT} x2=${size.width - RIGHT} y1=${up.at(value)} y2=${up.at(value)} />
        <text class="tick" x=${LEFT - 5} y=${up.at(value) + 4} text-anchor="end">${String(value).replace('-', '\u2212')}</text>`)}
      <text class="axis-title" x=${size.width - RIGHT} y=${size.height - 6} text-anchor="end">${t(`web.explore.axis.${view}_x`)}</text>
      <text class="axis-title" x=${LEFT + 6} y=${TOP + 10}>${t(`web.explore.axis.${view}_y`)}</text>
      <path class="path" d=${points.map((point, i) => `${i ? 'L' : 'M'}${place(point)}`).join('')} />
      ${points.map((point) => point.rest && html`
        <circle class="rest" cx=${across.at(point.x)} cy=${up.at(point.y)} r="4" onMouseEnter=${() => onOver(point)} onMouseLeave=${() => onOver(null)} onClick=${() => onGo(point.state)} />`)}
      ${points.map((point) => targets.has(point.state) && html`
        <g class="target" transform=${`translate(${place(point)})`}><path d="M0 -7L7 0L0 7L-7 0Z" /><text x=${across.at(point.x) > size.width - 80 ? -10 : 10} y="4" text-anchor=${across.at(point.x) > size.width - 80 ? 'end' : 'start'}>${t('web.explore.target_word')}</text></g>`)}
      <circle class="now" cx=${across.at(now.x)} cy=${up.at(now.y)} r="6" />
    </svg>`;
}

const readout = (view, point) => `${t(`web.explore.point.${view}`, { x: fixed(point.x), y: fixed(point.y, 2) })}: ${trimWords(point.state)}`;

export const trimWords = ({ camber, twist, sheet }) => t('web.explore.trim_of', { camber: fixed(camber), twist: fixed(twist), sheet: fixed(sheet) });
