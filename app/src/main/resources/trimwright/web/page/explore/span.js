// Along the span, foot down: side force and drive for a metre of wing, and the stall margin. The three heights of the
// drawing are marked; a click takes the middle one elsewhere.
import { html, useRef, useState } from '../dom.js';
import { fixed } from '../format.js';
import { t } from '../text.js';
import { useSize } from '../hooks.js';
import { endsOf, ticksOf } from './axis.js';
import { Num } from './number.js';
import { stripAt } from './sections.js';

const LANES = [
  { name: 'side', key: 'side_n_per_m', unit: 'n_per_m', least: 500 },
  { name: 'drive', key: 'drive_n_per_m', unit: 'n_per_m', least: 150 },
  { name: 'margin', key: 'stall_margin_deg', unit: 'deg', least: 10 },
];
const LEFT = 34;
const TOP = 34;
const BOTTOM = 22;
const GAP = 12;
/** The outermost strips carry nothing; their margin of stall is the model's, not the trimmer's. */
const MOST_MARGIN = 25;

export function SpanChart({ answer, kept, strip, onStrip }) {
  const [ref, size] = useSize();
  const [over, setOver] = useState(null);
  const { wing, shape } = answer;
  const tops = useRef({});
  const ready = wing && size.width > 150;
  const shown = wing && (over ?? strip);
  return html`
    <section class="panel span-panel" aria-labelledby="span-title">
      <h2 id="span-title">${t('web.explore.span')}</h2>
      <div class="plot" ref=${ref}>${ready && html`
        <${Lanes} wing=${wing} kept=${kept} shape=${shape} size=${size} tops=${tops.current} shown=${shown} onOver=${setOver} onStrip=${onStrip} />`}</div>
      <p class="quiet readout">${wing && html`<${Readout} wing=${wing} strip=${shown} />`}</p>
    </section>`;
}

function Lanes({ wing, kept, shape, size, tops, shown, onOver, onStrip }) {
  const { strips } = wing;
  const span = strips.at(-1).height_above_foot_m + strips.at(-1).width_m / 2;
  const bottom = size.height - BOTTOM;
  const y = (height) => bottom - (height / span) * (bottom - TOP);
  const width = (size.width - LEFT - GAP * LANES.length) / LANES.length;
  const heightUnder = (event) => ((bottom - (event.clientY - event.currentTarget.getBoundingClientRect().top)) / (bottom - TOP)) * span;
  const stripUnder = (event) => stripAt(strips, heightUnder(event));
  const onKey = (event) => {
    const step = { ArrowUp: 1, ArrowDown: -1, PageUp: 5, PageDown: -5 }[event.key];
    if (!step) return;
    event.preventDefault();
    onStrip(Math.max(0, Math.min(strips.length - 1, shown + step)));
  };
  return html`
    <svg width=${size.width} height=${size.height} tabindex="0" role="application" aria-roledescription=${t('web.prepare.lanes_role')} aria-label=${t('web.explore.span_label')}
      onMouseMove=${(e) => onOver(stripUnder(e))} onMouseLeave=${() => onOver(null)} onClick=${(e) => onStrip(stripUnder(e))} onKeyDown=${onKey}>
      ${ticksOf(0, span, 5).map((height) => html`<text class="tick" x=${LEFT - 5} y=${y(height) + 4} text-anchor="end">${height}</text>`)}
      ${shape.stations.map((one) => html`<line class=${`cut ${one.place}`} x1=${LEFT} x2=${size.width} y1=${y(one.height_m)} y2=${y(one.height_m)} />`)}
      ${LANES.map((lane, i) => html`<${Lane} key=${lane.name} lane=${lane} strips=${strips} before=${kept?.strips} y=${y} top=${TOP} bottom=${bottom} left=${LEFT + GAP + i * (width + GAP)} width=${width} tops=${tops} shown=${shown} />`)}
      <line class="shown" x1=${LEFT} x2=${size.width} y1=${y(strips[shown].height_above_foot_m)} y2=${y(strips[shown].height_above_foot_m)} />
    </svg>`;
}

function Lane({ lane, strips, before, y, top, bottom, left, width, tops, shown }) {
  const valuesOf = (all) => all.map((strip) => (lane.name === 'margin' ? Math.min(MOST_MARGIN, strip[lane.key]) : strip[lane.key]));
  const values = valuesOf(strips);
  // The scale grows with what was shown and does not shrink: a change of load is then a change of the picture.
  const seen = (tops[lane.name] = tops[lane.name] ?? []);
  const [low, high] = endsOf([...values, ...seen], lane.least);
  tops[lane.name] = [Math.min(...values, ...seen), Math.max(...values, ...seen)];
  const x = (value) => left + ((value - low) / (high - low)) * width;
  const lineOf = (numbers) => numbers.map((value, i) => `${i ? 'L' : 'M'}${x(value).toFixed(1)} ${y(strips[i].height_above_foot_m).toFixed(1)}`).join('');
  const line = lineOf(values);
  return html`
    <g class=${`span-lane ${lane.name}`}>
      <text class="lane-name" x=${left} y="12">${t(`web.explore.short.${lane.name}`)}</text>
      <text class="tick" x=${left} y="26">${t(`web.explore.unit.${lane.unit}`)}</text>
      ${ticksOf(low, high, width / 45).filter((value) => x(value) < left + width - 8).map((value) => html`
        <line class=${value === 0 ? 'zero' : 'grid'} x1=${x(value)} x2=${x(value)} y1=${top} y2=${bottom} />
        <text class="tick" x=${x(value)} y=${bottom + 14} text-anchor="middle">${fixed(value, 0)}</text>`)}
      <path class="area" d=${`${line}L${x(0).toFixed(1)} ${y(strips.at(-1).height_above_foot_m).toFixed(1)}L${x(0).toFixed(1)} ${y(strips[0].height_above_foot_m).toFixed(1)}Z`} />
      ${before && html`<path class="before" d=${lineOf(valuesOf(before))} />`}
      <path class="line" d=${line} />
      ${lane.name === 'margin' && strips.map((strip, i) => values[i] < 0 && html`<circle class="stall-dot" cx=${x(values[i])} cy=${y(strip.height_above_foot_m)} r="2.6" />`)}
      <circle class="here" cx=${x(values[shown])} cy=${y(strips[shown].height_above_foot_m)} r="3.5" />
    </g>`;
}

function Readout({ wing, strip }) {
  const number = (key, decimals) => html`<${Num} wing=${wing} path=${`strips.${strip}.${key}`} decimals=${decimals} />`;
  return html`${t('web.explore.at')} ${number('height_above_foot_m', 1)} m: ${LANES.map(({ name, key, unit }, i) => html`
    ${i ? ', ' : ''}${t(`web.explore.short.${name}`)} ${number(key, name === 'margin' ? 1 : 0)} ${t(`web.explore.unit.${unit}`)}`)}. ${t('web.explore.span_note')}`;
}
