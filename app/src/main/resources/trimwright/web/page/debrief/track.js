// Where the boat went: north up, the shown stretch strong, the rest faint, the cursor's place as a dot.
import { html, useEffect, useRef } from '../dom.js';
import { getColumns, query } from '../api.js';
import { useStore } from '../store.js';
import { t } from '../text.js';
import { useAnswer, useSize } from '../hooks.js';

const MARGIN = 22;
const LENGTHS = [10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10000, 20000];

export function Track({ base, view, pieces }) {
  const { whole } = view;
  const { from, to, cursor } = useStore(view);
  const line = useAnswer((signal) => getColumns(`${base}/track${query({ from: whole.from, to: whole.to, positions: 12000 })}`, { signal }), [base]);
  const [ref, size] = useSize();
  const canvas = useRef(null);
  const drawn = useRef(null);
  useEffect(() => {
    if (canvas.current && line.value && size.width) drawn.current = draw(canvas.current, size, line.value, { from, to, cursor, pieces });
  }, [line.value, size, from, to, cursor, pieces]);
  const pick = (event) => {
    if (!drawn.current || !line.value) return;
    const frame = canvas.current.getBoundingClientRect();
    const at = drawn.current.nearest(event.clientX - frame.left, event.clientY - frame.top);
    view.point(at);
    if (event.type === 'click') view.show(at - (to - from) / 2, at + (to - from) / 2);
  };
  const none = line.value && line.value[0].length === 0;
  return html`
    <figure class="track" ref=${ref}>
      ${none ? html`<p class="quiet">${t('web.debrief.no_track')}</p>`
        : html`<canvas ref=${canvas} role="img" aria-label=${t('web.debrief.track_label')} onPointerMove=${pick} onPointerLeave=${() => view.point(null)} onClick=${pick}></canvas>`}
    </figure>`;
}

function draw(canvas, size, [times, north, east], { from, to, cursor, pieces }) {
  const dense = window.devicePixelRatio || 1;
  canvas.width = size.width * dense;
  canvas.height = size.height * dense;
  const ctx = canvas.getContext('2d');
  ctx.scale(dense, dense);
  ctx.clearRect(0, 0, size.width, size.height);
  ctx.lineJoin = 'round';
  const inside = indexRange(times, from, to);
  const box = boxOf(north, east, inside[1] - inside[0] > 1 ? inside : [0, times.length]);
  const scale = Math.min((size.width - 2 * MARGIN) / box.width, (size.height - 2 * MARGIN) / box.height);
  const x = (i) => size.width / 2 + (east[i] - box.east) * scale;
  const y = (i) => size.height / 2 - (north[i] - box.north) * scale;
  const stroke = (first, last, colour, width) => {
    ctx.beginPath();
    for (let i = first; i < last; i++) {
      if (i === first || times[i] - times[i - 1] > 60) ctx.moveTo(x(i), y(i));
      else ctx.lineTo(x(i), y(i));
    }
    ctx.strokeStyle = colour;
    ctx.lineWidth = width;
    ctx.stroke();
  };
  stroke(0, times.length, '#c6ced4', 1.2);
  stroke(inside[0], inside[1], '#0072b2', 2.2);
  for (const piece of pieces) {
    if (piece.group === 'turn') {
      const [first, last] = indexRange(times, piece.from, piece.to);
      stroke(first, last, '#e69f00', 3.2);
    }
  }
  if (cursor !== null) {
    const i = Math.max(0, indexRange(times, cursor, cursor)[0] - 1);
    ctx.beginPath();
    ctx.arc(x(i), y(i), 5, 0, 2 * Math.PI);
    ctx.fillStyle = '#ffffff';
    ctx.strokeStyle = '#16202b';
    ctx.lineWidth = 2.2;
    ctx.fill();
    ctx.stroke();
  }
  furniture(ctx, size, scale);
  return {
    nearest(px, py) {
      let best = 0;
      let least = Infinity;
      for (let i = 0; i < times.length; i++) {
        const d = (x(i) - px) ** 2 + (y(i) - py) ** 2;
        if (d < least) {
          least = d;
          best = i;
        }
      }
      return times[best];
    },
  };
}

/** North arrow and a bar of round length. */
function furniture(ctx, size, scale) {
  ctx.fillStyle = '#566270';
  ctx.strokeStyle = '#566270';
  ctx.lineWidth = 1.4;
  ctx.font = '12px system-ui, sans-serif';
  ctx.beginPath();
  ctx.moveTo(14, 34);
  ctx.lineTo(14, 12);
  ctx.moveTo(10, 18);
  ctx.lineTo(14, 11);
  ctx.lineTo(18, 18);
  ctx.stroke();
  ctx.fillText(t('web.debrief.north'), 22, 20);
  const metres = LENGTHS.findLast((one) => one * scale < size.width * 0.4) ?? LENGTHS[0];
  ctx.beginPath();
  ctx.moveTo(12, size.height - 14);
  ctx.lineTo(12, size.height - 10);
  ctx.lineTo(12 + metres * scale, size.height - 10);
  ctx.lineTo(12 + metres * scale, size.height - 14);
  ctx.stroke();
  ctx.fillText(metres < 1000 ? `${metres} m` : `${metres / 1000} km`, 16 + metres * scale, size.height - 8);
}

function boxOf(north, east, [first, last]) {
  let n = Infinity;
  let s = -Infinity;
  let w = Infinity;
  let e = -Infinity;
  for (let i = first; i < last; i++) {
    n = Math.min(n, north[i]);
    s = Math.max(s, north[i]);
    w = Math.min(w, east[i]);
    e = Math.max(e, east[i]);
  }
  return { north: (n + s) / 2, east: (w + e) / 2, width: Math.max(20, e - w), height: Math.max(20, s - n) };
}

/** Indices of the times from first to last, the end not included. */
function indexRange(times, first, last) {
  const at = (wanted) => {
    let low = 0;
    let high = times.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (times[middle] < wanted) low = middle + 1;
      else high = middle;
    }
    return low;
  };
  return [at(first), Math.min(times.length, at(last) + 1)];
}
