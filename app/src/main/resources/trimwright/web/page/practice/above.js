// The boat from above, bow up: the wing as it stands and the wind that is felt.
import { html } from '../dom.js';
import { t } from '../text.js';

const SIZE = 200;
const LENGTH = 112;

export function Above({ shape }) {
  const half = ((shape.hull_spacing_m / shape.hull_length_m) * LENGTH) / 2;
  return html`
    <svg class="above" viewBox=${`${-SIZE / 2} ${-SIZE / 2 - 26} ${SIZE} ${SIZE + 34}`} width=${SIZE} height=${SIZE + 34} role="img" aria-label=${t('web.practice.above')}>
      ${[-half, half].map((x) => html`<path class="hull" d=${`M${x} ${-LENGTH / 2}C${x + 7} ${-LENGTH / 5} ${x + 6} ${LENGTH / 3} ${x + 4} ${LENGTH / 2}H${x - 4}C${x - 6} ${LENGTH / 3} ${x - 7} ${-LENGTH / 5} ${x} ${-LENGTH / 2}Z`} />`)}
      <rect class="deck" x=${-half} y="-14" width=${2 * half} height="52" />
      <g class="rig"><ellipse class="main" cx="0" cy="12" rx="4.5" ry="21" /><g class="flap-turn"><ellipse class="flap" cx="0" cy="15" rx="3" ry="15" /></g></g>
      <g class="felt"><path d="M0 -104V-66M-6 -75L0 -65L6 -75" /></g>
      <g class="true"><path d="M0 -104V-82M-4 -89L0 -81L4 -89" /></g>
      <g class="helm"><line x1=${-half} x2=${-half} y1=${LENGTH / 2 - 2} y2=${LENGTH / 2 + 11} /></g>
    </svg>`;
}

export function turnAbove(root, frame) {
  const svg = root.querySelector('svg.above');
  svg.querySelector('.rig').setAttribute('transform', `rotate(${(frame.side * frame.sheet_deg).toFixed(2)})`);
  svg.querySelector('.flap-turn').setAttribute('transform', `translate(0 33) rotate(${(-frame.side * frame.camber_deg).toFixed(2)})`);
  svg.querySelector('.felt').setAttribute('transform', `rotate(${frame.awa_deg.toFixed(2)})`);
  svg.querySelector('.true').setAttribute('transform', `rotate(${frame.twa_deg.toFixed(2)})`);
}
