// Where the boats went: north up, the shown stretch strong, the rest faint, marks and boundary of the course, and at the
// cursor the place of each boat.
import { html, useEffect, useRef, useState } from '../dom.js';
import { getColumns, getJson, query } from '../api.js';
import { useStore } from '../store.js';
import { useAnswer, useSize } from '../hooks.js';
import { t } from '../text.js';
import { drawCourse, drawFurniture } from './course.js';

const MARGIN = 24;
/** Positions of all boats together. */
const POSITIONS = 18000;
const GAP_SECONDS = 60;
/** No closer than this (m). */
const LEAST_SHOWN = 60;
const FAINT = '#c6ced4';
const INK = '#16202b';
const LIT = '#16202b59';
const TURN = '#e69f00';

/** @param {{session: string, fleet: any, focus: string, view: any, pieces: any[]}} props */
export function Chart({ session, fleet, focus, view, pieces }) {
  const { from, to, cursor, lit } = useStore(view);
  const { shown } = useStore(fleet);
  const base = `/api/sessions/${encodeURIComponent(session)}`;
  const course = useAnswer((signal) => getJson(`${base}/map`, { signal }), [base]);
  const lines = useLines(base, fleet.boats, view.whole);
  const [ref, size] = useSize();
  const still = useRef(null);
  const moving = useRef(null);
  const drawn = useRef(null);
  const paths = fleet.drawn(focus).filter((boat) => lines.has(boat.name)).map((boat) => ({ boat, line: lines.get(boat.name) }));
  useEffect(() => {
    if (still.current && size.width) drawn.current = drawStill(still.current, size, paths, { from, to, whole: view.whole, focus, pieces, lit, course: course.value?.course });
  }, [lines, course.value, size, from, to, focus, shown, pieces, lit]);
  useEffect(() => {
    if (moving.current && size.width && drawn.current) drawMoving(moving.current, size, paths, drawn.current, cursor, focus);
  }, [lines, course.value, size, from, to, focus, shown, pieces, lit, cursor]);
  const pick = (event) => {
    const own = lines.get(focus);
    if (!drawn.current || !own?.times.length) return;
    const frame = moving.current.getBoundingClientRect();
    const at = nearest(own, drawn.current, event.clientX - frame.left, event.clientY - frame.top);
    view.point(at);
    if (event.type === 'click') view.centre(at);
  };
  const none = lines.size === fleet.boats.length && [...lines.values()].every((line) => line.times.length === 0);
  return html`
    <figure class="track" ref=${ref}>
      ${none ? html`<p class="quiet">${t('web.debrief.no_track')}</p>`
        : html`<canvas ref=${still} role="img" aria-label=${t('web.debrief.track_label')}></canvas>
          <canvas ref=${moving} class="moving" aria-hidden="true" onPointerMove=${pick} onPointerLeave=${() => view.point(null)} onClick=${pick}></canvas>`}
    </figure>`;
}

/** The line of each boat, by name, as they come. */
function useLines(base, boats, whole) {
  const [lines, setLines] = useState(new Map());
  useEffect(() => {
    const abort = new AbortController();
    const positions = Math.floor(POSITIONS / boats.length);
    for (const { name } of boats) {
      getColumns(`${base}/boats/${encodeURIComponent(name)}/track${query({ from: whole.from, to: whole.to, positions })}`, { signal: abort.signal }).then(
        ([times, north, east]) => abort.signal.aborted || setLines((old) => new Map(old).set(name, { times, north, east })),
        (fault) => {
          if (!abort.signal.aborted) throw fault;
        },
      );
    }
    return () => abort.abort();
  }, [base]);
  return lines;
}

function cleared(canvas, size) {
  const dense = window.devicePixelRatio || 1;
  canvas.width = size.width * dense;
  canvas.height = size.height * dense;
  const ctx = canvas.getContext('2d');
  ctx.scale(dense, dense);
  ctx.lineJoin = 'round';
  return ctx;
}

/** @returns {{x: (east: number) => number, y: (north: number) => number}} where places of the earth lie on the canvas */
function drawStill(canvas, size, paths, { from, to, whole, focus, pieces, lit, course }) {
  const ctx = cleared(canvas, size);
  // A stretch of the day is that of the boat looked at; others may lie outside.
  const box = boxOf(to - from < whole.to - whole.from ? paths.slice(-1) : paths, from, to);
  const scale = Math.min((size.width - 2 * MARGIN) / box.width, (size.height - 2 * MARGIN) / box.height);
  const place = { x: (east) => size.width / 2 + (east - box.east) * scale, y: (north) => size.height / 2 - (north - box.north) * scale };
  const stroke = (line, [first, last], { colour, width, dash = [] }) => {
    ctx.beginPath();
    for (let i = first; i < last; i++) {
      const jump = i === first || line.times[i] - line.times[i - 1] > GAP_SECONDS;
      ctx[jump ? 'moveTo' : 'lineTo'](place.x(line.east[i]), place.y(line.north[i]));
    }
    ctx.setLineDash(dash);
    ctx.strokeStyle = colour;
    ctx.lineWidth = width;
    ctx.stroke();
    ctx.setLineDash([]);
  };
  for (const { line } of paths) stroke(line, [0, line.times.length], { colour: FAINT, width: 1 });
  if (course) drawCourse(ctx, course, place);
  for (const { boat, line } of paths) {
    const inside = indexRange(line.times, from, to);
    const here = boat.name === focus;
    if (here && lit) for (const span of lit.spans) stroke(line, indexRange(line.times, span.from, span.to), { colour: LIT, width: 9 });
    stroke(line, inside, { colour: boat.colour, width: here ? 2.4 : 1.3, dash: here ? [] : boat.dash });
    if (here) {
      for (const piece of pieces) {
        if (piece.group === 'turn' && piece.to > from && piece.from < to) stroke(line, indexRange(line.times, piece.from, piece.to), { colour: TURN, width: 2.4 });
      }
    }
  }
  drawFurniture(ctx, size, scale);
  return place;
}

function drawMoving(canvas, size, paths, place, cursor, focus) {
  const ctx = cleared(canvas, size);
  if (cursor === null) return;
  for (const { boat, line } of paths) {
    const i = Math.max(0, indexRange(line.times, cursor, cursor)[0] - 1);
    if (!line.times.length || Math.abs(line.times[i] - cursor) > GAP_SECONDS) continue;
    const x = place.x(line.east[i]);
    const y = place.y(line.north[i]);
    ctx.beginPath();
    ctx.arc(x, y, boat.name === focus ? 6 : 4, 0, 2 * Math.PI);
    ctx.fillStyle = '#ffffff';
    ctx.strokeStyle = boat.colour;
    ctx.lineWidth = 2.4;
    ctx.fill();
    ctx.stroke();
    if (paths.length > 1) {
      ctx.font = `${boat.name === focus ? 'bold ' : ''}12px system-ui, sans-serif`;
      ctx.lineWidth = 3;
      ctx.strokeStyle = '#ffffffd0';
      ctx.strokeText(boat.letter, x + 8, y - 4);
      ctx.fillStyle = INK;
      ctx.fillText(boat.letter, x + 8, y - 4);
    }
  }
}

function nearest({ times, north, east }, place, px, py) {
  let best = 0;
  let least = Infinity;
  for (let i = 0; i < times.length; i++) {
    const d = (place.x(east[i]) - px) ** 2 + (place.y(north[i]) - py) ** 2;
    if (d < least) {
      least = d;
      best = i;
    }
  }
  return times[best];
}

/** Middle and size of what the boats sailed in the window. */
function boxOf(paths, from, to) {
  let [n, s, w, e] = [-Infinity, Infinity, Infinity, -Infinity];
  for (const { line } of paths) {
    const inside = indexRange(line.times, from, to);
    const [first, last] = inside[1] - inside[0] > 1 ? inside : [0, line.times.length];
    for (let i = first; i < last; i++) {
      n = Math.max(n, line.north[i]);
      s = Math.min(s, line.north[i]);
      w = Math.min(w, line.east[i]);
      e = Math.max(e, line.east[i]);
    }
  }
  if (n < s) return { north: 0, east: 0, width: LEAST_SHOWN, height: LEAST_SHOWN };
  return { north: (n + s) / 2, east: (w + e) / 2, width: Math.max(LEAST_SHOWN, e - w), height: Math.max(LEAST_SHOWN, n - s) };
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
