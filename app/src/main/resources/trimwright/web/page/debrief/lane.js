// One lane: some channels over the time that is shown, drawn by uPlot. Cursor and gestures belong to the whole stack.
import uPlot from 'uplot';
import { html, useEffect, useLayoutEffect, useRef } from '../dom.js';
import { useStore } from '../store.js';
import { t, wordFor } from '../text.js';
import { valueAt } from './columns.js';
import { Reason, drawMarks, reasonsIn } from './marks.js';
import { timeMarks } from './timeaxis.js';
import { tick, unitOf, written } from './units.js';

export const LEFT = 54;
export const RIGHT = 10;
const INK = '#566270';
const RULE = '#e6eaec';
const COLOURS = ['#0072b2', '#d55e00', '#009e73', '#cc79a7', '#56b4e9', '#e69f00', '#16202b'];
const BESIDE_DASH = [1.5, 2];
const DASHES = [[], [7, 3], [2, 3], [9, 3, 2, 3]];

export const colourOf = (i) => COLOURS[i % COLOURS.length];
const dashOf = (i) => DASHES[i % DASHES.length];

/**
 * @param {{lane: {name: string, channels: any[]}, data: any, beside: {boat: any, data: any}|null, view: any, pieces: any[], width: number, height: number}} props
 * beside: another boat's columns, drawn finely in the same colours
 */
export function Lane({ lane, data, beside, view, pieces, width, height }) {
  const place = useRef(null);
  const plot = useRef(null);
  const shown = useRef(null);
  const { from, to, lit } = useStore(view);
  const { utc } = useStore(view.clock);
  shown.current = { from, to, pieces, clock: view.clock, lit, marked: markedOf(lane, data) };

  const names = lane.channels.map((channel) => channel.path).join('\n') + (beside ? `\n${beside.boat.name}` : '');
  const boats = beside ? 2 : 1;
  useLayoutEffect(() => {
    plot.current = new uPlot(options(lane, boats, width, height, shown), Array.from({ length: boats * lane.channels.length + 1 }, () => []), place.current);
    return () => plot.current.destroy();
  }, [names]);
  useLayoutEffect(() => plot.current.setSize({ width, height }), [width, height]);
  useEffect(() => {
    if (data) plot.current.setData(aligned(lane, beside ? [data, beside.data] : [data]), false);
    plot.current.setScale('x', { min: from, max: to });
  }, [data, beside?.data, from, to, utc, lit, names]);

  return html`
    <section class="lane-box" data-lane=${lane.name}>
      <${LaneHead} lane=${lane} data=${data} beside=${beside} view=${view} />
      <div class="lane-plot" ref=${place}></div>
    </section>`;
}

/** The lane's name, and each channel with its colour, dash and value at the cursor. */
function LaneHead({ lane, data, beside, view }) {
  const { from, to, cursor } = useStore(view);
  const valueOf = (channel, columns) => {
    const column = columns?.paths.indexOf(channel.path) ?? -1;
    return cursor !== null && column >= 0 ? valueAt(columns.times[column], columns.values[column], cursor) : null;
  };
  return html`
    <div class="lane-head"><h3>${wordFor(`web.lane.${lane.name}`, lane.name)}</h3>
      ${lane.channels.map((channel, i) => {
        return html`<span class="entry"><svg width="22" height="8"><line x1="0" x2="22" y1="4" y2="4" stroke=${colourOf(i)} stroke-width="2.4" stroke-dasharray=${dashOf(i).join(' ')} /></svg>
          ${channelName(channel.path)} <b class="number">${written(channel, valueOf(channel, data))}</b>
          ${beside && html`<span class="beside number">${beside.boat.letter} ${written(channel, valueOf(channel, beside.data))}</span>`} <span class="unit">${unitOf(channel)}</span></span>`;
      })}
      ${markedOf(lane, data).flatMap((marked, i) => reasonsIn(marked, from, to).map((mark) => html`
        <span class="entry left-out">${channelName(lane.channels[i].path)}: <${Reason} mark=${mark} colour=${colourOf(i)} /></span>`))}
    </div>`;
}

const NO_MARKS = { times: [], kinds: [] };

/** Marks of the lane's channels, in their order. */
function markedOf(lane, data) {
  return lane.channels.map((channel) => data?.marked[data.paths.indexOf(channel.path)] ?? NO_MARKS);
}

/** The name of a channel; what another device gave of the same quantity carries that device's mark. */
export function channelName(path) {
  const [base, source] = path.split('@');
  const name = wordFor(`web.channel.${base}`, base);
  return source ? `${name} (${source})` : name;
}

/** All channels of each boat over one list of times: a break is null, no sample at that time is undefined. */
function aligned(lane, boats) {
  const tables = [];
  let middle = null;
  for (const [channel, data] of boats.flatMap((data) => lane.channels.map((channel) => [channel, data]))) {
    const i = data?.paths.indexOf(channel.path) ?? -1;
    if (i < 0) {
      tables.push([[], []]);
      continue;
    }
    let values = Array.from(data.values[i], (value) => (Number.isNaN(value) ? null : value));
    if (channel.turn !== 'none') {
      const own = meanOf(data.values[i]);
      middle ??= own;
      const turns = Number.isFinite(own) && Number.isFinite(middle) ? Math.round((middle - own) / 360) : 0;
      if (turns) values = values.map((value) => (value === null ? null : value + 360 * turns));
    }
    tables.push([Array.from(data.times[i]), values]);
  }
  return tables.length === 1 ? tables[0] : uPlot.join(tables);
}

/** Which turn of the compass a line is drawn on, nothing more. */
function meanOf(values) {
  let sum = 0;
  let count = 0;
  for (const value of values) {
    if (!Number.isNaN(value)) {
      sum += value;
      count++;
    }
  }
  return count ? sum / count : NaN;
}

function options(lane, boats, width, height, shown) {
  const [first] = lane.channels;
  const angles = first.turn !== 'none';
  return {
    width,
    height,
    padding: [8, RIGHT, 4, 0],
    legend: { show: false },
    cursor: { show: false },
    select: { show: false },
    scales: {
      x: { time: false, range: () => [shown.current.from, shown.current.to] },
      y: { range: (u, low, high) => roomy(low, high, angles ? 12 : first.unit === 'kn' ? 2 : 0.5) },
    },
    axes: [
      {
        size: 0, show: true, stroke: INK, grid: { stroke: RULE, width: 1 }, ticks: { show: false },
        splits: (u) => timeMarks(shown.current.from, shown.current.to, u.width - LEFT - RIGHT, shown.current.clock).marks,
        values: (u, splits) => splits.map(() => ''),
      },
      {
        size: LEFT, stroke: INK, grid: { stroke: RULE, width: 1 }, ticks: { show: false }, font: '12px system-ui, sans-serif', space: 18, gap: 6,
        incrs: angles ? [1, 2, 5, 10, 15, 30, 45, 90, 180] : undefined,
        values: (u, splits) => splits.map((value) => tick(first, value)),
      },
    ],
    series: [
      {},
      ...lane.channels.map((channel, i) => ({ stroke: colourOf(i), width: 1.6, dash: dashOf(i), points: { show: false }, spanGaps: false })),
      ...(boats > 1 ? lane.channels.map((channel, i) => ({ stroke: `${colourOf(i)}b0`, width: 1, dash: BESIDE_DASH, points: { show: false }, spanGaps: false })) : []),
    ],
    hooks: {
      drawClear: [(u) => shade(u, shown.current)],
      draw: [(u) => shown.current.marked.forEach((marked, i) => drawMarks(u, marked, colourOf(i), shown.current.from, shown.current.to))],
    },
  };
}

function roomy(low, high, least) {
  if (low === null || low === undefined) return [0, 1];
  const room = Math.max(0.08 * (high - low), (least - (high - low)) / 2, 0);
  return [low - room, high + room];
}

/** Turns as a faint ground, so that a change of course is seen in every lane; above it a bar over what is picked out elsewhere. */
function shade(u, { pieces, lit }) {
  const { ctx, bbox } = u;
  const fill = ({ from, to }, height) => {
    const x1 = Math.max(bbox.left, u.valToPos(from, 'x', true));
    const x2 = Math.min(bbox.left + bbox.width, u.valToPos(to, 'x', true));
    if (x2 > x1) ctx.fillRect(x1, bbox.top, x2 - x1, height);
  };
  ctx.save();
  ctx.fillStyle = '#e69f0026';
  pieces.filter((piece) => piece.group === 'turn').forEach((piece) => fill(piece, bbox.height));
  if (lit) {
    ctx.fillStyle = '#16202b14';
    lit.spans.forEach((span) => fill(span, bbox.height));
    ctx.fillStyle = INK;
    lit.spans.forEach((span) => fill(span, 3 * (devicePixelRatio || 1)));
  }
  ctx.restore();
}
