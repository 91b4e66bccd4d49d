// The boat from astern: heel, height over the water, foils, wing. Starboard is right.
import { html } from '../dom.js';
import { t } from '../text.js';

const HEIGHT = 330;
const WIDTH = 230;

export function Astern({ shape }) {
  const scale = scaleOf(shape);
  const half = (shape.hull_spacing_m / 2) * scale;
  const deck = 0.9 * scale;
  const head = (shape.foot_height_m + shape.wing_span_m) * scale;
  return html`
    <svg class="astern" viewBox=${`${-WIDTH / 2} ${-HEIGHT + 52} ${WIDTH} ${HEIGHT}`} width=${WIDTH} height=${HEIGHT} role="img" aria-label=${t('web.practice.astern')}>
      <rect class="sea" x=${-WIDTH / 2} y="0" width=${WIDTH} height="60" />
      <g class="boat">
        ${['port', 'starboard'].map((side) => html`<g class=${`board ${side}`}><path d=${`M0 0V${shape.board_length_m * scale}H${(side === 'port' ? 1 : -1) * shape.tip_span_m * scale}`} /></g>`)}
        <path class="hull" d=${hull(-half, deck)} /><path class="hull" d=${hull(half, deck)} />
        <line class="beam" x1=${-half} x2=${half} y1=${-deck} y2=${-deck} />
        <line class="wing" x1="0" x2="0" y1=${-shape.foot_height_m * scale} y2=${-head} />
        <circle class="crew" r="4.5" cy=${-deck - 5} />
      </g>
      <text class="heel-word" x=${-WIDTH / 2 + 4} y=${-HEIGHT + 66}></text>
    </svg>`;
}

const scaleOf = (shape) => (HEIGHT - 78) / (shape.foot_height_m + shape.wing_span_m + 1.5);
const hull = (x, deck) => `M${x - 5} ${-deck}C${x - 6} ${-deck / 3} ${x - 3} 0 ${x} 0C${x + 3} 0 ${x + 6} ${-deck / 3} ${x + 5} ${-deck}Z`;

export function turnAstern(root, frame, shape) {
  const svg = root.querySelector('svg.astern');
  const scale = scaleOf(shape);
  const half = (shape.hull_spacing_m / 2) * scale;
  svg.querySelector('.boat').setAttribute('transform', `translate(0 ${(-frame.ride_height_m * scale).toFixed(2)}) rotate(${frame.roll_deg.toFixed(2)})`);
  for (const [side, x] of [['port', -half], ['starboard', half]]) {
    const up = (1 - frame[`${side}_board_ratio`]) * shape.board_length_m * scale;
    svg.querySelector(`.board.${side}`).setAttribute('transform', `translate(${x} ${(-up).toFixed(2)})`);
  }
  svg.querySelector('.crew').setAttribute('cx', (frame.crew_m * scale).toFixed(2));
}
