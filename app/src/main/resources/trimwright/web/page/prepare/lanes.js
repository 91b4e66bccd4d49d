// Speed against angle, one lane a wind. All lanes share one angle axis and one speed range; the chosen wind's lane is
// taller. Mouse: hover reads, click chooses. Keys: arrows, Home, End, u and d for the best points.
import { html, useState } from '../dom.js';
import { fixed, degrees } from '../format.js';
import { t } from '../text.js';
import { useSize } from '../hooks.js';
import { closest, neighbour, pointAt, stretches } from './points.js';

const LEFT = 62;
const RIGHT = 58;
const TOP = 26;
const BOTTOM = 34;
const FOCUS_SHARE = 3.2;
const LANE_GAP = 5;

export function SpeedLanes({ lanes, earlier, chosen, onChoose }) {
  const [ref, size] = useSize();
  const [hover, setHover] = useState(null);
  const filled = lanes.filter((lane) => lane.points.length);
  const scale = size.width > 200 && filled.length ? scaleOf(lanes, chosen, size) : null;
  return html`
    <div class="lanes">
      <div class="plot" ref=${ref}>${scale && html`
        <svg width=${size.width} height=${size.height} tabindex="0" role="application" aria-roledescription=${t('web.prepare.lanes_role')}
          aria-label=${t('web.prepare.lanes_label')} aria-describedby="lanes-readout"
          onKeyDown=${(e) => onKey(e, lanes, chosen, onChoose)}
          onMouseMove=${(e) => setHover(pointUnder(e, lanes, scale))} onMouseLeave=${() => setHover(null)}
          onClick=${(e) => { const point = pointUnder(e, lanes, scale); if (point) onChoose(point); }}>
          <${Axis} scale=${scale} twa=${chosen?.twa_deg} />
          ${lanes.map((lane, i) => html`
            <${Lane} key=${lane.tws} lane=${lane} earlier=${earlier?.find((one) => one.tws === lane.tws)} box=${scale.boxes[i]}
              scale=${scale} chosen=${chosen?.tws_kn === lane.tws ? chosen : null} twa=${chosen?.twa_deg} />`)}
          ${hover && html`<${Mark} point=${hover} scale=${scale} name="hover" />`}
          ${chosen && html`<${Mark} point=${chosen} scale=${scale} name="chosen" />`}
        </svg>`}</div>
      <output id="lanes-readout" class="readout" aria-live="polite">${readout(hover ?? chosen)}</output>
      <p class="keys"><span><kbd>\u2190</kbd> <kbd>\u2192</kbd> ${t('web.prepare.key_angle')}</span>
        <span><kbd>\u2191</kbd> <kbd>\u2193</kbd> ${t('web.prepare.key_wind')}</span>
        <span><kbd>u</kbd> <kbd>d</kbd> ${t('web.prepare.key_best')}</span></p>
    </div>`;
}

function readout(point) {
  if (!point) return '';
  return t(point.foiling ? 'web.prepare.readout_foiling' : 'web.prepare.readout_hulls', {
    tws: fixed(point.tws_kn, 0), twa: fixed(point.twa_deg, point.mode === 'angle' ? 0 : 1), speed: fixed(point.boat_speed_kn), vmg: fixed(Math.abs(point.vmg_kn)),
  });
}

/** Places of lanes and the two scales, in pixels. */
function scaleOf(lanes, chosen, size) {
  const points = lanes.flatMap((lane) => lane.points);
  const angles = lanes.flatMap((lane) => [...lane.points, ...lane.unsolved]).map((point) => point.twa_deg);
  const low = Math.min(...angles);
  const high = Math.max(...angles);
  const top = Math.max(...points.map((point) => point.boat_speed_kn)) * 1.06;
  const plot = { left: LEFT, right: size.width - RIGHT, top: TOP, bottom: size.height - BOTTOM };
  const focus = lanes.findIndex((lane) => lane.tws === chosen?.tws_kn);
  const shares = lanes.map((_, i) => (i === focus ? FOCUS_SHARE : 1));
  const unit = (plot.bottom - plot.top - LANE_GAP * (lanes.length - 1)) / shares.reduce((a, b) => a + b, 0);
  let y = plot.top;
  const boxes = lanes.map((_, i) => {
    const box = { top: y, height: unit * shares[i], focus: i === focus };
    y += box.height + LANE_GAP;
    return box;
  });
  const x = (twa) => plot.left + ((twa - low) / (high - low)) * (plot.right - plot.left);
  const speed = (box, kn) => box.top + box.height * (1 - kn / top);
  return { plot, boxes, low, high, top, x, speed, lanes, twaAt: (px) => low + ((px - plot.left) / (plot.right - plot.left)) * (high - low) };
}

function Axis({ scale, twa }) {
  const { plot } = scale;
  const step = plot.right - plot.left > 460 ? 10 : 20;
  const ticks = [];
  for (let at = Math.ceil(scale.low / step) * step; at <= scale.high; at += step) ticks.push(at);
  return html`
    <g class="axis">
      <text class="axis-title" x="4" y=${plot.top - 11}>${t('web.prepare.axis_wind')}</text>
      <text class="axis-title" x=${plot.right + RIGHT - 4} y=${plot.top - 11} text-anchor="end">${t('web.prepare.axis_speed_at', { twa: fixed(twa, 0) })}</text>
      ${ticks.map((at) => html`
        <line class=${at % 30 === 0 ? 'grid strong' : 'grid'} x1=${scale.x(at)} x2=${scale.x(at)} y1=${plot.top} y2=${plot.bottom} />
        <text x=${scale.x(at)} y=${plot.bottom + 14} text-anchor="middle">${at}\u00b0</text>`)}
      <text class="axis-title" x=${(plot.left + plot.right) / 2} y=${plot.bottom + 29} text-anchor="middle">${t('web.prepare.axis_angle')}</text>
      ${Number.isFinite(twa) && html`<line class="at-angle" x1=${scale.x(twa)} x2=${scale.x(twa)} y1=${plot.top} y2=${plot.bottom} />`}
    </g>`;
}

function Lane({ lane, earlier, box, scale, chosen, twa }) {
  const { plot } = scale;
  const path = (points) => points.map((p, i) => `${i ? 'L' : 'M'}${scale.x(p.twa_deg).toFixed(1)} ${scale.speed(box, p.boat_speed_kn).toFixed(1)}`).join('');
  const fill = (points) => `${path(points)}L${scale.x(points.at(-1).twa_deg).toFixed(1)} ${box.top + box.height}L${scale.x(points[0].twa_deg).toFixed(1)} ${box.top + box.height}Z`;
  const base = box.top + box.height;
  const atAngle = lane.points.length && Number.isFinite(twa) ? pointAt(lane, twa) : null;
  const tall = box.height > 60;
  const labelled = box.height > 26;
  return html`
    <g class=${box.focus ? 'lane focus' : 'lane'} data-tws=${lane.tws}>
      <rect class="ground" x=${plot.left} y=${box.top} width=${plot.right - plot.left} height=${box.height} />
      ${tall && speedTicks(scale.top).map((kn) => html`
        <line class="grid" x1=${plot.left} x2=${plot.right} y1=${scale.speed(box, kn)} y2=${scale.speed(box, kn)} />
        <text class="tick" x=${plot.left - 4} y=${scale.speed(box, kn) + 3.5} text-anchor="end">${kn}</text>`)}
      <line class="base" x1=${plot.left} x2=${plot.right} y1=${base} y2=${base} />
      ${earlier && stretches(earlier).map((points) => html`<path class="line-earlier" d=${path(points)} />`)}
      ${stretches(lane).map((points) => html`
        <path class=${points[0].foiling ? 'fill-foiling' : 'fill-hulls'} d=${fill(points)} />
        <path class=${points[0].foiling ? 'line-foiling' : 'line-hulls'} d=${path(points)} />`)}
      ${lane.unsolved.map((one) => html`<path class="none" d=${`M${scale.x(one.twa_deg) - 3} ${base - 7}l6 6m0 -6l-6 6`}><title>${one.reason}</title></path>`)}
      ${lane.upwind && html`<${Best} point=${lane.upwind} box=${box} scale=${scale} labelled=${labelled} />`}
      ${lane.downwind && html`<${Best} point=${lane.downwind} box=${box} scale=${scale} labelled=${labelled} />`}
      <text class="wind" x=${4} y=${tall ? box.top + 16 : box.top + box.height / 2 + 5}>${fixed(lane.tws, 0)}<tspan class="small"> kn</tspan></text>
      ${atAngle && Math.abs(atAngle.twa_deg - twa) < 2.6 && html`
        <text class="at" x=${plot.right + RIGHT - 4} y=${box.top + box.height / 2 + 5} text-anchor="end">${fixed(atAngle.boat_speed_kn)}</text>`}
    </g>`;
}

function speedTicks(top) {
  const ticks = [];
  for (let kn = 10; kn < top; kn += 10) ticks.push(kn);
  return ticks;
}

/** A best-VMG point: triangle on the line, speed and angle written on the side where the line leaves room. */
function Best({ point, box, scale, labelled }) {
  const x = scale.x(point.twa_deg);
  const y = scale.speed(box, point.boat_speed_kn);
  const up = point.mode === 'upwind';
  const triangle = up ? `M${x} ${y - 6}l5.5 10h-11Z` : `M${x} ${y + 6}l5.5 -10h-11Z`;
  const below = y + 18 < box.top + box.height;
  return html`
    <path class="best" d=${triangle} />
    ${labelled && html`<text class="best-label" x=${up ? x + 9 : x - 9} y=${below ? y + 15 : y - 8} text-anchor=${up ? 'start' : 'end'}>
      ${fixed(point.boat_speed_kn)} kn, ${degrees(point.twa_deg)}</text>`}`;
}

function Mark({ point, scale, name }) {
  const i = scale.lanes.findIndex((lane) => lane.tws === point.tws_kn);
  if (i < 0) return null;
  return html`<circle class=${`mark ${name}`} cx=${scale.x(point.twa_deg)} cy=${scale.speed(scale.boxes[i], point.boat_speed_kn)} r=${name === 'chosen' ? 6 : 4.5} />`;
}

function pointUnder(event, lanes, scale) {
  const frame = event.currentTarget.getBoundingClientRect();
  const y = event.clientY - frame.top;
  const i = scale.boxes.findIndex((box) => y < box.top + box.height + LANE_GAP / 2);
  const lane = lanes[i < 0 ? lanes.length - 1 : i];
  return lane.points.length ? closest(lane.points, (point) => point.twa_deg, scale.twaAt(event.clientX - frame.left)) : null;
}

function onKey(event, lanes, chosen, onChoose) {
  if (event.ctrlKey || event.metaKey || event.altKey) return;
  const filled = lanes.filter((lane) => lane.points.length);
  const lane = filled.find((one) => one.tws === chosen?.tws_kn);
  if (!lane) return;
  const at = filled.indexOf(lane);
  const moves = {
    ArrowLeft: () => neighbour(lane, chosen, -1),
    ArrowRight: () => neighbour(lane, chosen, 1),
    ArrowUp: () => sameIn(filled[at - 1], chosen),
    ArrowDown: () => sameIn(filled[at + 1], chosen),
    Home: () => lane.points[0],
    End: () => lane.points.at(-1),
    u: () => lane.upwind,
    d: () => lane.downwind,
  };
  const move = moves[event.key];
  if (!move) return;
  event.preventDefault();
  const point = move();
  if (point) onChoose(point);
}

/** The like point in another lane: its best one where this is a best one, else the same angle. */
function sameIn(lane, point) {
  if (!lane) return null;
  return (point.mode !== 'angle' && lane[point.mode]) || pointAt(lane, point.twa_deg);
}
