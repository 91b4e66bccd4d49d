// The time axis at the foot of the lanes: one for all, in sight however many lanes there are.
import { html } from '../dom.js';
import { useStore } from '../store.js';
import { timeOfDay } from '../format.js';

/** Steps between marks (s), for the lanes' grid too. */
export const TIME_STEPS = [0.1, 0.2, 0.5, 1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 900, 1800, 3600, 7200, 14400];
/** Least room for a mark (px). */
export const TIME_SPACE = 90;

export function TimeAxis({ view, width, left, right }) {
  const { from, to } = useStore(view);
  const scale = (width - left - right) / (to - from);
  if (!(scale > 0)) return null;
  const step = TIME_STEPS.find((one) => one * scale >= TIME_SPACE) ?? TIME_STEPS.at(-1);
  const marks = [];
  for (let n = Math.ceil(from / step); n * step <= to; n++) marks.push(n * step);
  return html`
    <svg class="time-axis" width=${width} height="20" aria-hidden="true">
      ${marks.map((at) => html`<text x=${left + (at - from) * scale} y="14" text-anchor="middle">${label(at, step)}</text>`)}
    </svg>`;
}

function label(at, step) {
  const text = timeOfDay(at + 1e-6);
  return step < 1 ? `${text}.${Math.round((at % 1) * 10)}` : step < 60 ? text : text.slice(0, 5);
}
