// Samples that are left out because something speaks against them: a shape for each reason, and the word beside it.
import { html } from '../dom.js';
import { t } from '../text.js';

/** By the number that files and answers use; 0 is good, 1 absent. Shapes fill a square from -1 to 1. */
export const MARKS = [
  { kind: 2, key: 'frozen', outline: [[-0.9, -0.9], [0.9, -0.9], [0.9, 0.9], [-0.9, 0.9]] },
  { kind: 3, key: 'jump', outline: [[0, -1], [1, 0.9], [-1, 0.9]] },
  { kind: 4, key: 'out_of_range', outline: [[-1, -0.45], [-0.45, -1], [0, -0.5], [0.45, -1], [1, -0.45], [0.5, 0], [1, 0.45], [0.45, 1], [0, 0.5], [-0.45, 1], [-1, 0.45], [-0.5, 0]] },
  { kind: 5, key: 'time_repaired', outline: [[0, -1], [1, 0], [0, 1], [-1, 0]] },
];

const SIZE = 4;

/** Draws the marks of one channel along the foot of a chart. */
export function drawMarks(u, { times, kinds }, colour, from, to) {
  const { ctx, bbox } = u;
  const scale = devicePixelRatio || 1;
  const y = bbox.top + bbox.height - (SIZE + 1) * scale;
  ctx.save();
  ctx.fillStyle = colour;
  for (let i = 0; i < times.length; i++) {
    const mark = MARKS.find((one) => one.kind === kinds[i]);
    if (!mark || times[i] < from || times[i] > to) continue;
    const x = u.valToPos(times[i], 'x', true);
    ctx.beginPath();
    for (const [dx, dy] of mark.outline) ctx.lineTo(x + dx * SIZE * scale, y + dy * SIZE * scale);
    ctx.fill();
  }
  ctx.restore();
}

/** Which reasons stand in a stretch of a channel's marks. */
export function reasonsIn({ times, kinds }, from, to) {
  return MARKS.filter((mark) => kinds.some((kind, i) => kind === mark.kind && times[i] >= from && times[i] <= to));
}

/** A reason as shape and word. */
export function Reason({ mark, colour = 'currentColor' }) {
  return html`
    <span class="reason"><svg width="11" height="11" viewBox="-1.1 -1.1 2.2 2.2" aria-hidden="true"><polygon points=${mark.outline.join(' ')} fill=${colour} /></svg>
      ${t(`web.mark.${mark.key}`)}</span>`;
}
