// The wing cut at three heights, from above: outlines come from the server in metres and are only placed on the paper.
// Dragging a main element sheets, dragging the flap at the foot cambers, at the head twists.
import { html, useRef } from '../dom.js';
import { degrees, fixed } from '../format.js';
import { t } from '../text.js';
import { useSize } from '../hooks.js';
import { Num, Term } from './number.js';

const ABEAM = 84;
const AXIS_AT = 0.68;
/** Longest arrow of the wind over the height of the paper. */
const ARROW = 0.17;

/** Index of the strip that is closest to a height. */
export function stripAt(strips, height) {
  let best = 0;
  strips.forEach((strip, i) => {
    if (Math.abs(strip.height_above_foot_m - height) < Math.abs(strips[best].height_above_foot_m - height)) best = i;
  });
  return best;
}

export function Sections({ answer, kept, onTurn, onRest }) {
  const [ref, size] = useSize();
  const { shape, wing } = answer;
  const abeam = size.width > 520 ? ABEAM : 0;
  const column = (size.width - abeam) / 3;
  return html`
    <div class="sections">
      <div class="paper" ref=${ref}>${shape && size.width > 150 && html`
        <svg width=${size.width} height=${size.height} role="img" aria-label=${t('web.explore.sections_label')}>
          ${abeam > 0 && html`<${FromAbeam} shape=${shape} size=${size} />`}
          ${shape.stations.map((station, i) => html`
            <${Station} key=${station.place} station=${station} before=${keptAt(kept, i, station)} wing=${wing} onTurn=${onTurn} onRest=${onRest}
              box=${{ left: abeam + i * column, width: column, height: size.height, chord: chordOf(shape) }} />`)}
        </svg>`}</div>
      <div class="station-notes" style=${{ '--abeam': `${abeam}px` }}>${shape?.stations.map((station) => html`
        <${Notes} key=${station.place} station=${station} wing=${wing} />`)}</div>
    </div>`;
}

/** The section of the kept state, if it is cut at the same height. */
function keptAt(kept, i, station) {
  const before = kept?.shape.stations[i];
  return before?.height_m === station.height_m ? before : null;
}

/** The largest chord: one scale for every trim, so that the drawing does not jump. */
const chordOf = (shape) => Math.max(...shape.planform.main_m.map(([forward]) => forward)) - Math.min(...shape.planform.flap_m.map(([forward]) => forward));

/** A closed outline; place gives the paper's x and y of a pair of metres. */
const outline = (points, place) => `${points.map(([a, b], i) => `${i ? 'L' : 'M'}${place(a, b).map((v) => v.toFixed(1)).join(' ')}`).join('')}Z`;

function Station({ station, before, wing, box, onTurn, onRest }) {
  const widest = Math.max(...[...station.main_m, ...station.flap_m].map(([, starboard]) => -starboard));
  const arrow = ARROW * box.height;
  const top = arrow + 10;
  const scale = Math.min((box.height - top - 14) / box.chord, (AXIS_AT * box.width - 4) / Math.max(0.42 * box.chord, widest));
  const x = box.left + AXIS_AT * box.width;
  const y = top + 0.24 * box.chord * scale;
  const place = (forward, starboard) => [x + starboard * scale, y - forward * scale];
  const strip = wing?.strips[stripAt(wing.strips, station.height_m)];
  const stalled = strip && strip.stall_margin_deg < 0;
  const nose = station.main_m.reduce((a, b) => (b[0] > a[0] ? b : a));
  const hinge = station.flap_m.reduce((a, b) => (b[0] > a[0] ? b : a));
  const sheet = useDrag((turn) => onTurn('sheet', turn), onRest);
  const flap = useDrag((turn) => (station.place === 'head' ? onTurn('twist', turn) : onTurn('camber', -turn)), onRest);
  const turns = station.place === 'middle' ? 'flap' : 'flap turns';
  return html`
    <g class=${`station ${station.place} ${stalled ? 'stalled' : ''}`}>
      <line class="centre" x1=${x} x2=${x} y1="4" y2=${box.height - 4} />
      ${strip && html`<${WindArrow} strip=${strip} wing=${wing} longest=${arrow} at=${place(...nose)} />`}
      ${before && html`<path class="before" d=${outline(before.main_m, place) + outline(before.flap_m, place)} />`}
      <path class="main turns" d=${outline(station.main_m, place)} ...${sheet([x, y])} />
      <path class=${turns} d=${outline(station.flap_m, place)} ...${station.place === 'middle' ? {} : flap(place(...hinge))} />
      <circle class="axis-mark" cx=${x} cy=${y} r="2.5" />
    </g>`;
}

/** Where the wind comes from at that height, its length its speed. */
function WindArrow({ strip, wing, longest, at: [x, y] }) {
  const fastest = Math.max(...wing.strips.map((one) => one.aws_kn));
  const length = fastest > 0 ? (longest * strip.aws_kn) / fastest : 0;
  if (length < 3) return null;
  return html`<g class="wind-arrow" transform=${`translate(${x.toFixed(1)} ${y.toFixed(1)}) rotate(${Math.abs(strip.awa_deg).toFixed(2)})`}>
    <path d=${`M0 ${-length - 6}V-6M-4.5 -13L0 -5L4.5 -13`} /></g>`;
}

/** Turning with the pointer about a spot of the paper; told in degrees, clockwise positive. */
function useDrag(onTurn, onRest) {
  const held = useRef(null);
  const told = useRef(null);
  told.current = onTurn;
  return ([px, py]) => ({
    onPointerDown(event) {
      if (event.button !== 0) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      held.current = angleOf(event, px, py);
    },
    onPointerMove(event) {
      if (held.current === null) return;
      const angle = angleOf(event, px, py);
      const turn = ((angle - held.current + 540) % 360) - 180;
      held.current = angle;
      told.current(turn);
    },
    onPointerUp() {
      held.current = null;
      onRest();
    },
    onPointerCancel() {
      held.current = null;
      onRest();
    },
  });
}

function angleOf(event, px, py) {
  const frame = event.currentTarget.ownerSVGElement.getBoundingClientRect();
  return (Math.atan2(event.clientY - frame.top - py, event.clientX - frame.left - px) * 180) / Math.PI;
}

/** What the air does at that height, in numbers. */
function Notes({ station, wing }) {
  const i = wing ? stripAt(wing.strips, station.height_m) : 0;
  const isStalled = wing && wing.strips[i].stall_margin_deg < 0;
  const number = (key, decimals) => html`<${Num} wing=${wing} path=${`strips.${i}.${key}`} decimals=${decimals} />`;
  return html`
    <div class=${`note ${station.place}`}>
      <h3><span class="swatch"></span>${t(`web.wing.${station.place}`)} <span class="quiet">${t('web.explore.up', { height: fixed(station.height_m) })}</span></h3>
      ${wing && html`<dl class="pairs">
        <div><dt>${t('web.explore.wind_there')}</dt><dd>${number('aws_kn', 1)} ${t('web.unit.aws')}, ${number('awa_deg', 0)}\u00b0</dd></div>
        <div><dt>${t('web.explore.flap_there')}</dt><dd>${number('flap_angle_deg', 1)}\u00b0</dd></div>
        <div><dt><${Term} name="attack">${t('web.explore.attack')}<//></dt><dd>${number('alpha_deg', 1)}\u00b0</dd></div>
        <div><dt><${Term} name="lift_coefficient">${t('web.explore.cl_there')}<//></dt><dd>${number('lift_coefficient', 2)}</dd></div>
        <div><dt>${isStalled ? html`<b class="stalled-word">${t('web.explore.stalled_here')}</b>` : t('web.explore.margin_there')}</dt><dd>${number('stall_margin_deg', 1)}\u00b0</dd></div>
      </dl>`}
      ${!wing && html`<p class="quiet">${t('web.explore.flap_there')} ${degrees(station.flap_deg, 1)}</p>`}
    </div>`;
}

/** The wing from abeam: leading edge left, foot down; the heights of the three sections marked. */
function FromAbeam({ shape, size }) {
  const points = [...shape.planform.main_m, ...shape.planform.flap_m];
  const span = Math.max(...points.map(([, z]) => z));
  const fore = Math.max(...points.map(([forward]) => forward));
  const aft = Math.min(...points.map(([forward]) => forward));
  const scale = Math.min((size.height - 16) / span, (ABEAM - 22) / (fore - aft));
  const x = (forward) => 8 + (fore - forward) * scale;
  const y = (z) => size.height - 8 - z * scale;
  const place = (forward, z) => [x(forward), y(z)];
  return html`
    <g class="abeam">
      <path class="main" d=${outline(shape.planform.main_m, place)} />
      <path class="flap" d=${outline(shape.planform.flap_m, place)} />
      ${shape.stations.map((one) => html`<line class=${`cut ${one.place}`} x1="2" x2=${x(aft) + 8} y1=${y(one.height_m)} y2=${y(one.height_m)} />`)}
    </g>`;
}
