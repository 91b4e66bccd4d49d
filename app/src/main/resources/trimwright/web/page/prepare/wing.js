// The wing as it is set: outlines come from the server in metres, here they are only placed on the paper.
import { html } from '../dom.js';
import { getJson, query } from '../api.js';
import { degrees, fixed } from '../format.js';
import { t } from '../text.js';
import { useAnswer } from '../hooks.js';

const COLUMN = 104;
const ABEAM = 92;
const TOP = 44;
const HEIGHT = 262;
const LABELS = 46;

export function WingDrawing({ boat, wing, point }) {
  const path = `/api/boats/${encodeURIComponent(boat.id)}/wings/${encodeURIComponent(wing.id)}/shape` + query({
    camber_deg: point.camber_deg, twist_deg: point.twist_deg, twist_mid_ratio: point.twist_mid_ratio, sheet_deg: point.sheet_deg,
  });
  const shape = useAnswer((signal) => getJson(path, { signal }), [path, boat.hash]);
  return html`
    <figure class="wing">
      <h3>${t('web.wing.title')}</h3>
      ${shape.value && html`
        <svg viewBox=${`0 0 ${ABEAM + 3 * COLUMN} ${HEIGHT}`} role="img" aria-label=${t('web.wing.label')}>
          <${FromAbeam} shape=${shape.value} />
          <${FromAbove} shape=${shape.value} awa=${point.awa_deg} />
        </svg>`}
      <figcaption class="quiet">${t('web.wing.caption')}</figcaption>
    </figure>`;
}

/** A closed outline; place gives the paper's x and y of a pair of metres. */
const outline = (points, place) => points.map(([a, b], i) => `${i ? 'L' : 'M'}${place(a, b).map((v) => v.toFixed(2)).join(' ')}`).join('') + 'Z';

/** Sections at foot, middle and head side by side at one scale: bow up, starboard right, wind from starboard. */
function FromAbove({ shape, awa }) {
  const all = shape.stations.flatMap((one) => [...one.main_m, ...one.flap_m]);
  const fore = Math.max(...all.map(([forward]) => forward));
  const aft = Math.min(...all.map(([forward]) => forward));
  const side = Math.max(...all.map(([, starboard]) => Math.abs(starboard)));
  const scale = Math.min((HEIGHT - TOP - LABELS - 10) / (fore - aft), (COLUMN / 2 - 6) / side);
  const y = (forward) => TOP + (fore - forward) * scale;
  return shape.stations.map((one, i) => {
    const middle = ABEAM + (i + 0.5) * COLUMN;
    const place = (forward, starboard) => [middle + starboard * scale, y(forward)];
    return html`
      <g class=${`station ${one.place}`}>
        <line class="centre" x1=${middle} x2=${middle} y1=${TOP - 6} y2=${HEIGHT - LABELS - 4} />
        <path class="main" d=${outline(one.main_m, place)} />
        <path class="flap" d=${outline(one.flap_m, place)} />
        <circle class="axis-mark" cx=${middle} cy=${y(0)} r="2" />
        <text class="name" x=${middle} y=${HEIGHT - LABELS + 14} text-anchor="middle">${t(`web.wing.${one.place}`)} ${degrees(one.flap_deg, 1)}</text>
        <text class="sizes" x=${middle} y=${HEIGHT - LABELS + 29} text-anchor="middle">${t('web.wing.sizes', { height: fixed(one.height_m), chord: fixed(one.chord_m, 2) })}</text>
        <g class="wind-arrow" transform=${`translate(${middle + 20} ${TOP - 22}) rotate(${awa})`}><path d="M0 -15V13M-4.5 6L0 14L4.5 6" /></g>
      </g>`;
  });
}

/** The wing from abeam: leading edge left, foot down; the heights of the three sections marked. */
function FromAbeam({ shape }) {
  const points = [...shape.planform.main_m, ...shape.planform.flap_m];
  const span = Math.max(...points.map(([, z]) => z));
  const fore = Math.max(...points.map(([forward]) => forward));
  const aft = Math.min(...points.map(([forward]) => forward));
  const scale = Math.min((HEIGHT - 20) / span, (ABEAM - 34) / (fore - aft));
  const x = (forward) => 10 + (fore - forward) * scale;
  const y = (z) => HEIGHT - 10 - z * scale;
  const place = (forward, z) => [x(forward), y(z)];
  return html`
    <g class="abeam">
      <path class="main" d=${outline(shape.planform.main_m, place)} />
      <path class="flap" d=${outline(shape.planform.flap_m, place)} />
      <line class="axis-mark" x1=${x(0)} x2=${x(0)} y1=${y(0) + 5} y2=${y(span) - 5} />
      ${shape.stations.map((one) => html`<line class=${`cut ${one.place}`} x1="2" x2=${x(aft) + 10} y1=${y(one.height_m)} y2=${y(one.height_m)} />`)}
    </g>`;
}
