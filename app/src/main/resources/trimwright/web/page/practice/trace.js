// Seconds lost over the drill's length.
import { html } from '../dom.js';
import { t } from '../text.js';

const WIDTH = 1000;
const HEIGHT = 84;

export function Trace({ drill }) {
  const x = (time) => (time / drill.length_s) * WIDTH;
  return html`
    <figure class="trace"><svg viewBox=${`0 0 ${WIDTH} ${HEIGHT}`} preserveAspectRatio="none" role="img" aria-label=${t('web.practice.trace')}>
      ${drill.words_s.map((word) => html`<line class="said" x1=${x(word)} x2=${x(word)} y1="0" y2=${HEIGHT} />`)}
      <path class="lost-line" d="" /></svg>
      <figcaption>${t('web.practice.trace')} <b class="scale"></b></figcaption></figure>`;
}

export function growTrace(root, trace, drill) {
  const figure = root.querySelector('.trace');
  // Kept from the last drawing: most pictures bring no new point.
  if (figure.drawn === trace.length && figure.of === trace) return;
  figure.drawn = trace.length;
  figure.of = trace;
  const most = Math.max(2, ...trace.map(([, lost]) => lost));
  const least = Math.min(0, ...trace.map(([, lost]) => lost));
  const points = trace.map(([time, lost]) => `${((time / drill.length_s) * WIDTH).toFixed(1)} ${(3 + ((lost - least) / (most - least)) * (HEIGHT - 6)).toFixed(1)}`);
  figure.querySelector('.lost-line').setAttribute('d', points.length ? `M${points.join('L')}` : '');
  figure.querySelector('.scale').textContent = t('web.practice.scale', { most: most.toFixed(1) });
}
