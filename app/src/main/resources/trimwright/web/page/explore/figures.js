// The forces in large, and the sheet's load against its limit.
import { html } from '../dom.js';
import { t } from '../text.js';
import { fixed } from '../format.js';
import { Num, Term, valueAt } from './number.js';

const FIGURES = [
  { name: 'drive', path: 'drive_force_n', over: 1000, decimals: 2, unit: 'kn', main: true },
  { name: 'side', path: 'side_force_n', over: 1000, decimals: 2, unit: 'kn' },
  { name: 'heeling', path: 'heeling_moment_nm', over: 1000, decimals: 1, unit: 'knm', main: true },
  { name: 'effort', path: 'effort_height_above_foot_m', decimals: 1, unit: 'm' },
  { name: 'margin', path: 'stall_margin_deg', decimals: 1, unit: 'deg', main: true },
  { name: 'turning', path: 'turning_moment_nm', over: 1000, decimals: 1, unit: 'knm' },
  { name: 'lift', path: 'lift_n', over: 1000, decimals: 1, unit: 'kn' },
  { name: 'drag', path: 'drag_n', over: 1000, decimals: 2, unit: 'kn' },
];

export function Figures({ wing, kept }) {
  return html`
    <dl class="figures explore-figures">
      ${FIGURES.map(({ name, unit, main, ...number }) => html`
        <div class=${main ? 'main' : ''}><dt><${Term} name=${name} /></dt>
          <dd>${wing ? html`<${Num} wing=${wing} ...${number} />` : '\u2013'}<span class="unit">${unit === 'deg' ? '' : ' '}${t(`web.explore.unit.${unit}`)}</span></dd><${Was} kept=${kept} ...${number} /></div>`)}
      <div class="main sheet-load"><dt><${Term} name="sheet_load" /></dt>
        <dd>${wing ? html`<${Num} wing=${wing} path="sheet_load_n" over=${1000} decimals=${2} />` : '\u2013'}
          ${' '}<span class="unit">${t('web.explore.unit.kn')}${wing && html` ${t('web.explore.of')} <${Num} wing=${wing} path="sheet_load_max_n" over=${1000} decimals=${1} />`}</span></dd>
        <${Was} kept=${kept} path="sheet_load_n" over=${1000} decimals=${2} />
        ${wing && html`<${Bar} share=${wing.sheet_load_n / wing.sheet_load_max_n} />`}</div>
    </dl>
    ${wing && html`<${Work} wing=${wing} />`}`;
}

/** What the grinders have at hand, and what the flap's own gear holds. */
function Work({ wing }) {
  const one = wing.flap_panels.length === 1;
  return html`
    <p class="work"><${Term} name="tail_load" /> <${Num} wing=${wing} path="sheet_tail_load_n" decimals=${0} /> ${t('web.explore.unit.n')};
      ${' '}<${Term} name="grinding" /> <${Num} wing=${wing} path="grinding_power_w" decimals=${0} /> ${t('web.explore.unit.w')};
      ${' '}<${Term} name="hinge" /> ${wing.flap_panels.map((panel, i) => html`${i ? ', ' : ''}${!one && html`${t('web.explore.from_to', { from: fixed(panel.from_m), to: fixed(panel.to_m) })} `}
        <${Num} wing=${wing} path=${`flap_panels.${i}.hinge_moment_nm`} over=${1000} decimals=${2} /> ${t('web.explore.unit.knm')}`)}</p>`;
}

/** The same figure of the state that is kept. */
function Was({ kept, path, decimals, over = 1 }) {
  return kept && html`<dd class="was">${t('web.explore.was', { value: fixed(valueAt(kept, path) / over, decimals) })}</dd>`;
}

function Bar({ share }) {
  return html`
    <svg class="load-bar" width="100%" height="8" aria-hidden="true">
      <rect class="range" x="0" y="2" width="100%" height="4" rx="2" />
      <rect class=${share > 1 ? 'over' : 'load'} x="0" y="0" width=${`${100 * Math.min(1, share)}%`} height="8" rx="2" />
      <rect class="stop" x="99%" y="0" width="1%" height="8" />
    </svg>`;
}
