// Sheet, camber and twist as three bars: where each stands, where the card would have it, and buttons for fingers.
import { html } from '../dom.js';
import { fixed } from '../format.js';
import { t } from '../text.js';

const HEIGHT = 190;
const WIDTH = 62;
/** The sheet's bar shows this much (deg): beyond it lies only what is let go. */
const SHEET_SHOWN = 50;
const BARS = [
  { name: 'sheet', part: 'sheet', up: 'haul', down: 'ease', top: () => -4, bottom: (shape) => Math.min(SHEET_SHOWN, shape.sheet_max_deg) },
  { name: 'camber', part: 'camber', up: 'deepen', down: 'flatten', top: (shape) => shape.camber_max_deg, bottom: () => 0 },
  { name: 'twist', part: 'twist', up: 'more_twist', down: 'less_twist', top: (shape) => shape.twist_max_deg, bottom: () => 0 },
];

export function Bars({ shape, hands, mine }) {
  return html`<div class="bars">${BARS.map((bar) => html`<${Bar} bar=${bar} shape=${shape} hands=${hands} isMine=${mine.includes(bar.part)} />`)}
    <button class=${`invert ${mine.includes('inversion') ? '' : 'others'}`} ...${holds(hands, 'invert')}>${t('web.practice.act.invert')}</button></div>`;
}

function Bar({ bar, shape, hands, isMine }) {
  const wheel = (event) => {
    event.preventDefault();
    hands.notch(event.deltaY < 0 ? bar.up : bar.down);
  };
  return html`
    <div class=${`gauge ${bar.name} ${isMine ? '' : 'others'}`} onWheel=${wheel}>
      <h3>${t(`web.practice.part.${bar.part}`)}</h3>
      <button ...${holds(hands, bar.up)}>${t(`web.practice.act.${bar.up}`)}</button>
      <svg viewBox=${`0 0 ${WIDTH} ${HEIGHT}`} width=${WIDTH} height=${HEIGHT} role="img" aria-label=${t(`web.practice.part.${bar.part}`)}>
        <rect class="gauge-track" x="22" width="18" y="6" height=${HEIGHT - 12} rx="3" />
        <g class="aim"><path d="M10 0L20 -6V6ZM52 0L42 -6V6ZM20 0H42" /></g>
        <rect class="tick" x="17" width="28" y="-3" height="6" />
      </svg>
      <output>\u2013</output>
      <button ...${holds(hands, bar.down)}>${t(`web.practice.act.${bar.down}`)}</button>
    </div>`;
}

/** A button that works as long as it is held. */
function holds(hands, act) {
  return {
    onPointerDown: (event) => {
      event.currentTarget.setPointerCapture(event.pointerId);
      hands.press(act);
    },
    onPointerUp: () => hands.release(act),
    onPointerCancel: () => hands.release(act),
    onContextMenu: (event) => event.preventDefault(),
  };
}

export function moveBars(root, frame, shape) {
  for (const bar of BARS) {
    const gauge = root.querySelector(`.gauge.${bar.name}`);
    const top = bar.top(shape);
    const bottom = bar.bottom(shape);
    const y = (value) => 6 + Math.max(0, Math.min(1, (value - top) / (bottom - top))) * (HEIGHT - 12);
    gauge.querySelector('.aim').setAttribute('transform', `translate(0 ${y(frame[`aim_${bar.name}_deg`]).toFixed(1)})`);
    gauge.querySelector('.tick').setAttribute('transform', `translate(0 ${y(frame[`${bar.name}_deg`]).toFixed(1)})`);
    const text = `${fixed(frame[`${bar.name}_deg`], 0)}\u00b0`;
    const output = gauge.querySelector('output');
    if (output.textContent !== text) output.textContent = text;
  }
}
