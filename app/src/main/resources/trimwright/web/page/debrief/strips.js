// Leg strips: one row a leg, the way made good across, seconds lost downwards. Each boat is a line; the area between
// that of the boat looked at and the reference (nought) is what it lost, or above nought what it gained.
import { html, useEffect, useMemo, useRef } from '../dom.js';
import { useStore } from '../store.js';
import { duration, fixed } from '../format.js';
import { useSize } from '../hooks.js';
import { t, wordFor } from '../text.js';
import { instantAt, legAt, lostAt, madeAt } from './legs.js';

const LEFT = 96;
const RIGHT = 76;
const TOP = 10;
/** A row's room beyond its lines (px): above, and below for the scale of the way. */
const ROOM = 24;
/** A row has room for its head of three lines. */
const LEAST_ROW = 58;
/** A line that goes this many times as deep as the middle boat's runs out of its row, so that the others can be told apart. */
const DEEPEST = 2;
/** Below this a second cannot be told any more; the strips scroll instead (px). */
const LEAST_SECOND = 0.55;
const LABEL = 11.5;
/** As in debrief.css. */
const ONE_COLUMN = window.matchMedia('(max-width: 1000px)');
/** What all rows take together in one column, if that is enough for them (px). */
const COLUMN_HEIGHT = 640;
/** A leg that has a smaller part than this in the window is not shown where room is short. */
const LEAST_PART = 0.1;
/** Between marks of the way (m), and of seconds. */
const WAYS = [10, 20, 50, 100, 200, 500, 1000, 2000, 5000];
const STEPS = [1, 2, 5, 10, 20, 30, 60, 120, 300, 600];

/** @param {{fleet: any, focus: string, view: any, legs: Map<string, any[]>, pieces: any[], narrow: boolean}} props narrow: legs of the window only */
export function Strips({ fleet, focus, view, legs, pieces, narrow }) {
  const [ref, size] = useSize();
  const { shown } = useStore(fleet);
  const { lit, piece, from, to } = useStore(view);
  const own = legs.get(focus) ?? [];
  const inside = narrow ? own.filter((leg) => Math.min(leg.to, to) - Math.max(leg.from, from) > LEAST_PART * (to - from)).map((leg) => leg.number).join(' ') : '';
  const width = size.width - LEFT - RIGHT;
  // In one column the strips are as high as their rows, so their own height must not be what rows are fitted to.
  const room = ONE_COLUMN.matches ? COLUMN_HEIGHT : size.height;
  const rows = useMemo(() => rowsOf(fleet.drawn(focus), focus, legs, inside, room), [legs, focus, shown, inside, room]);
  // What is looked at elsewhere comes in sight here too.
  useEffect(() => {
    const leg = piece && legAt(own, (piece.from + piece.to) / 2);
    if (leg) ref.current.querySelector(`[data-leg="${leg.number}"]`)?.scrollIntoView({ block: 'nearest' });
  }, [piece]);
  const keys = (event) => onKey(event, view, own);
  return html`
    <div class="strips" ref=${ref} tabindex="0" role="application" aria-label=${t('web.debrief.strips_label')} onKeyDown=${keys} onPointerLeave=${() => view.point(null)}>
      ${width > 60 && rows.map((row) => html`
        <${Strip} key=${row.number} row=${row} focus=${focus} width=${width} view=${view} pieces=${pieces} lit=${lit} />`)}
      ${rows.length === 0 && html`<p class="quiet">${t('web.debrief.no_strips')}</p>`}
    </div>`;
}

/** Rows with one scale of seconds for all of them, so that areas can be compared from leg to leg. */
function rowsOf(boats, focus, legs, inside, height) {
  const only = inside.split(' ').map(Number);
  const all = [...new Set(boats.flatMap((boat) => (legs.get(boat.name) ?? []).map((leg) => leg.number)))].sort((a, b) => a - b);
  const numbers = inside ? all.filter((number) => only.includes(number)) : all;
  const rows = numbers.map((number) => {
    const lines = boats.flatMap((boat) => (legs.get(boat.name) ?? []).filter((leg) => leg.number === number).map((leg) => ({ boat, leg })));
    const lost = lines.flatMap(({ leg }) => leg.lost);
    const own = lines.find(({ boat }) => boat.name === focus)?.leg.lost ?? [];
    const middle = lines.map(({ leg }) => Math.max(...leg.lost)).sort((a, b) => a - b)[Math.floor((lines.length - 1) / 2)];
    return { number, lines, gain: Math.min(0, ...lost), loss: Math.min(Math.max(0, ...lost), Math.max(DEEPEST * middle, ...own, 5)) };
  });
  const sum = rows.reduce((total, row) => total + row.loss - row.gain, 0);
  const second = Math.max(LEAST_SECOND, (height - rows.length * ROOM - 4) / Math.max(1, sum));
  return rows.map((row) => ({ ...row, second, height: Math.max(LEAST_ROW, row.lines.length * LABEL + 8, (row.loss - row.gain) * second + ROOM) }));
}

function Strip({ row, focus, width, view, pieces, lit }) {
  const own = row.lines.find(({ boat }) => boat.name === focus)?.leg ?? null;
  const any = own ?? row.lines[0].leg;
  const box = useRef(null);
  const x = (made) => LEFT + Math.max(0, Math.min(1, made / any.length)) * width;
  const y = (lost) => TOP + (lost - row.gain) * row.second;
  const still = useMemo(() => html`<${Still} row=${row} own=${own} any=${any} width=${width} x=${x} y=${y} pieces=${pieces} lit=${lit} focus=${focus} />`, [row, width, pieces, lit, focus]);
  const instant = (event) => {
    const share = (event.clientX - box.current.getBoundingClientRect().left - LEFT) / width;
    return own && instantAt(own, share * own.length);
  };
  const showLeg = () => own && view.show(own.from - 5, own.to + 5);
  return html`
    <section class="strip" data-leg=${row.number}>
      <div class="strip-head">
        <button class="plain" onClick=${showLeg} disabled=${!own} title=${t('web.debrief.show_leg')}><b>${row.number}</b> ${own && duration(own.to - own.from)}${own?.ended === false && '\u2026'}</button>
        <span>${wordFor(`debrief.kind.${any.kind}`, any.kind)}</span>
        ${any.end && html`<span class="quiet">${t('web.debrief.to_mark', { mark: any.end })}</span>`}
      </div>
      <svg ref=${box} width=${LEFT + width + RIGHT} height=${row.height} aria-hidden="true"
        onPointerMove=${(event) => own && view.point(instant(event))}
        onClick=${(event) => own && view.centre(instant(event))}>
        ${still}
        <${Cursor} row=${row} view=${view} x=${x} y=${y} focus=${focus} />
      </svg>
    </section>`;
}

/** All of a strip that does not move with the cursor. */
function Still({ row, own, any, width, x, y, pieces, lit, focus }) {
  const grid = STEPS.find((step) => step * row.second >= 16) ?? STEPS.at(-1);
  const lines = [];
  for (let n = Math.ceil(row.gain / grid); n * grid <= row.loss; n++) lines.push(n * grid);
  const metres = WAYS.find((way) => (way / any.length) * width >= 64) ?? WAYS.at(-1);
  const ways = [];
  for (let at = metres; at < any.length - metres / 3; at += metres) ways.push(at);
  const turns = own ? turnsOn(own, pieces) : [];
  const spans = own && lit ? lit.spans.filter((span) => span.from < own.to && span.to > own.from) : [];
  return html`
    ${ways.map((at) => html`<line class="way" x1=${x(at)} x2=${x(at)} y1=${TOP} y2=${row.height - 12} /><text class="tick" x=${x(at)} y=${row.height - 2} text-anchor="middle">${at} m</text>`)}
    ${turns.map(([from, to]) => html`<rect class="turn" x=${x(from)} y=${TOP} width=${Math.max(1.5, x(to) - x(from))} height=${row.height - TOP - 12} />`)}
    ${lines.map((at) => html`<line class=${at === 0 ? 'nought' : 'second'} x1=${LEFT} x2=${LEFT + width} y1=${y(at)} y2=${y(at)} />
      <text class="tick" x=${LEFT - 5} y=${y(at) + 3.5} text-anchor="end">${at === 0 ? '0 s' : fixed(at, 0)}</text>`)}
    ${own && html`<path class="area" d=${area(own, x, y)} />`}
    ${spans.map((span) => html`<path class="lit" d=${path(cut(own, span), x, y)} />`)}
    ${row.lines.map(({ boat, leg }) => html`<path class=${boat.name === focus ? 'line focus' : 'line'} d=${path(leg, x, y)} stroke=${boat.colour} stroke-dasharray=${boat.dash.join(' ')} />`)}
    <${Ends} row=${row} left=${LEFT + width} y=${y} focus=${focus} />`;
}

/** Between which ways made good the boat turned; turns in a gap of the positions are left out. */
function turnsOn(own, pieces) {
  return pieces.filter((piece) => piece.group === 'turn' && piece.from < own.to && piece.to > own.from)
    .map((piece) => [madeAt(own, Math.max(own.from, piece.from)), madeAt(own, Math.min(own.to, piece.to))])
    .filter(([from, to]) => from !== null && to !== null);
}

/** What each boat lost on the leg, at the end of its line; moved apart where they would lie on each other. */
function Ends({ row, left, y, focus }) {
  const ends = row.lines.map(({ boat, leg }) => ({ boat, leg, at: y(leg.total) })).sort((a, b) => a.at - b.at);
  const least = Math.min(LABEL, (row.height - 8) / ends.length);
  let floor = 6;
  for (const end of ends) {
    end.at = Math.max(end.at, floor);
    floor = end.at + least;
  }
  let ceiling = row.height - 5;
  for (const end of [...ends].reverse()) {
    end.at = Math.min(end.at, ceiling);
    ceiling = end.at - least;
  }
  return ends.map(({ boat, leg, at }) => html`
    <text class=${boat.name === focus ? 'end focus' : 'end'} x=${left + 6} y=${at + 4} fill=${boat.colour}>${boat.letter} ${fixed(leg.total, 1)}${leg.ended ? '' : '\u2026'}${y(leg.total) > row.height ? ' \u2193' : ''}</text>`);
}

/** The cursor's instant in this row: a dot for each boat that sails the leg then, a line through that of the focus. */
function Cursor({ row, view, x, y, focus }) {
  const { cursor } = useStore(view);
  if (cursor === null) return null;
  return row.lines.filter(({ leg }) => legAt([leg], cursor)).map(({ boat, leg }) => {
    const made = madeAt(leg, cursor);
    if (made === null) return null;
    const here = boat.name === focus;
    return html`
      ${here && html`<line class="at" x1=${x(made)} x2=${x(made)} y1="2" y2=${row.height - 12} />`}
      <circle class="dot" cx=${x(made)} cy=${y(lostAt(leg, cursor))} r=${here ? 5 : 3.5} stroke=${boat.colour} />
      ${here && html`<text class="lost" x=${x(made) + 8} y=${Math.max(12, y(lostAt(leg, cursor)) - 5)}>${fixed(lostAt(leg, cursor))} s</text>`}`;
  });
}

function path(leg, x, y) {
  let d = '';
  let pen = 'M';
  leg.made.forEach((made, i) => {
    if (made === null) pen = 'M';
    else {
      d += `${pen}${x(made).toFixed(1)} ${y(leg.lost[i]).toFixed(1)}`;
      pen = 'L';
    }
  });
  return d;
}

function area(leg, x, y) {
  const known = leg.made.map((made, i) => ({ made, lost: leg.lost[i] })).filter(({ made }) => made !== null);
  if (!known.length) return '';
  const points = known.map(({ made, lost }) => `${x(made).toFixed(1)} ${y(lost).toFixed(1)}`);
  return `M${x(known[0].made)} ${y(0)}L${points.join('L')}L${x(known.at(-1).made)} ${y(0)}Z`;
}

/** The part of a leg within a span of time, its ends read off between the points. */
function cut(leg, span) {
  const from = Math.max(leg.from, span.from);
  const to = Math.min(leg.to, span.to);
  const instants = [from];
  for (let i = Math.ceil((from - leg.from) / leg.step); leg.from + i * leg.step < to; i++) instants.push(leg.from + i * leg.step);
  instants.push(to);
  return { made: instants.map((at) => madeAt(leg, at)), lost: instants.map((at) => lostAt(leg, at)) };
}

function onKey(event, view, own) {
  if (event.ctrlKey || event.metaKey || event.altKey || !own.length || event.target.closest('button')) return;
  const { cursor, from, to } = view.get();
  const now = cursor ?? (from + to) / 2;
  const here = Math.max(0, own.findIndex((leg) => now < leg.to));
  const jump = (leg) => {
    view.show(leg.from - 5, leg.to + 5);
    view.point(leg.from + 0.5);
  };
  const step = event.shiftKey ? 10 : 1;
  const act = {
    ArrowLeft: () => view.point(Math.max(own[0].from, now - step)),
    ArrowRight: () => view.point(Math.min(own.at(-1).to - 0.1, now + step)),
    ArrowUp: () => jump(own[Math.max(0, here - 1)]),
    ArrowDown: () => jump(own[Math.min(own.length - 1, cursor === null ? 0 : here + 1)]),
    Enter: () => jump(own[here]),
    0: () => view.all(),
    Escape: () => view.light(null),
  }[event.key];
  if (act) {
    event.preventDefault();
    act();
  }
}
