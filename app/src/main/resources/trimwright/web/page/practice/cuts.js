// The wing cut at foot, middle and head, from above, bow up: the main element by the sheet, the flap by camber and twist.
import { html } from '../dom.js';
import { t } from '../text.js';

const WIDTH = 250;
const HEIGHT = 330;
const PLACES = ['foot', 'middle', 'head'];
const AXIS_Y = 96;

export function Cuts({ shape }) {
  const scale = 185 / shape.chords_m[0];
  return html`
    <svg class="cuts" viewBox=${`0 0 ${WIDTH} ${HEIGHT}`} width=${WIDTH} height=${HEIGHT} role="img" aria-label=${t('web.practice.cuts')}>
      ${PLACES.map((place, i) => html`<${Cut} place=${place} x=${48 + i * 80} chord=${shape.chords_m[i] * scale} shape=${shape} />`)}
    </svg>`;
}

function Cut({ place, x, chord, shape }) {
  const main = (1 - shape.flap_chord_ratio) * chord;
  const ahead = shape.turning_axis_ratio * chord;
  return html`
    <g transform=${`translate(${x} ${AXIS_Y})`}>
      <line class="centre" y1=${-AXIS_Y + 26} y2=${HEIGHT - AXIS_Y - 26} />
      <g class="cut-wind"><path d=${`M0 ${-ahead - 44}V${-ahead - 12}M-5 ${-ahead - 20}L0 ${-ahead - 11}L5 ${-ahead - 20}`} /></g>
      <g class=${`cut ${place}`}>
        <path class="main" d=${outline(main, 0.18, -ahead)} />
        <g class="cut-flap" data-at=${(main - ahead).toFixed(1)}><path class="flap" d=${outline(shape.flap_chord_ratio * chord, 0.13, 3)} /></g>
        <circle class="axis-mark" r="2.5" />
      </g>
      <text class="place" y=${HEIGHT - AXIS_Y - 8}>${t(`web.wing.${place}`)}</text>
    </g>`;
}

/** A thick-nosed outline for the eye, nose up, beginning at y. */
function outline(chord, thickness, y) {
  const side = (sign) => {
    const points = [];
    for (let i = 0; i <= 16; i++) {
      const u = (1 - Math.cos((Math.PI * i) / 16)) / 2;
      points.push(`${(sign * 1.5 * thickness * chord * Math.sqrt(u) * (1 - u) ** 0.9).toFixed(2)} ${(y + u * chord).toFixed(2)}`);
    }
    return points;
  };
  return `M${side(1).join('L')}L${side(-1).reverse().join('L')}Z`;
}

export function turnCuts(root, frame) {
  const svg = root.querySelector('svg.cuts');
  const shares = [0, frame.twist_mid_ratio, 1];
  PLACES.forEach((place, i) => {
    const cut = svg.querySelector(`.cut.${place}`);
    const flap = frame.camber_deg - shares[i] * frame.twist_deg;
    cut.setAttribute('transform', `rotate(${(frame.side * frame.sheet_deg).toFixed(2)})`);
    const turned = cut.querySelector('.cut-flap');
    turned.setAttribute('transform', `translate(0 ${turned.dataset.at}) rotate(${(-frame.side * flap).toFixed(2)})`);
  });
  svg.querySelectorAll('.cut-wind').forEach((wind) => wind.setAttribute('transform', `rotate(${frame.awa_deg.toFixed(2)})`));
}
