// The time axis at the foot of the lanes: one for all, in sight however many lanes there are.
import { html } from '../dom.js';
import { useStore } from '../store.js';

/** Steps between marks (s). */
const STEPS = [0.1, 0.2, 0.5, 1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 900, 1800, 3600, 7200, 14400];
/** Least room for a mark (px). */
const SPACE = 90;

export function TimeAxis({ view, width, left, right }) {
  const { from, to } = useStore(view);
  useStore(view.clock);
  const { marks, step } = timeMarks(from, to, width - left - right, view.clock);
  const scale = (width - left - right) / (to - from);
  return html`
    <svg class="time-axis" width=${width} height="20" aria-hidden="true">
      ${marks.map((at) => html`<text x=${left + (at - from) * scale} y="14" text-anchor="middle">${label(view.clock, at, step)}</text>`)}
    </svg>`;
}

/** Marks at round times of day in the zone that is shown, for the axis and for the lanes' grid. */
export function timeMarks(from, to, width, clock) {
  const scale = width / (to - from);
  if (!(scale > 0)) return { marks: [], step: 1 };
  const step = STEPS.find((one) => one * scale >= SPACE) ?? STEPS.at(-1);
  const offset = clock.offset();
  const marks = [];
  for (let n = Math.ceil((from + offset) / step); n * step <= to + offset; n++) marks.push(n * step - offset);
  return { marks, step };
}

function label(clock, at, step) {
  const text = clock.timeOfDay(at + 1e-6);
  return step < 1 ? `${text}.${Math.round((at % 1) * 10)}` : step < 60 ? text : text.slice(0, 5);
}
