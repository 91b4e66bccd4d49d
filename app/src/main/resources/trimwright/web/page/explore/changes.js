// What one more of each control changes, from the engine's derivatives.
import { html } from '../dom.js';
import { t } from '../text.js';
import { INPUTS } from './inputs.js';
import { Num, Term } from './number.js';

const ORDER = ['camber_deg', 'twist_deg', 'twist_mid_ratio', 'sheet_deg', 'aws_kn', 'awa_deg', 'heel_deg'];
const COLUMNS = [
  { name: 'drive', key: 'drive_force_n', decimals: 0, unit: 'n' },
  { name: 'side', key: 'side_force_n', decimals: 0, unit: 'n' },
  { name: 'heeling', key: 'heeling_moment_nm', decimals: 2, over: 1000, unit: 'knm' },
  { name: 'sheet_load', key: 'sheet_load_n', decimals: 0, unit: 'n' },
  { name: 'margin', key: 'stall_margin_deg', decimals: 2, unit: 'deg' },
];

export function Changes({ wing }) {
  const rows = !wing ? [] : ORDER.map((control) => wing.one_more.findIndex((one) => one.control === control)).filter((i) => i >= 0);
  return html`
    <section class="panel changes" aria-labelledby="changes-title">
      <h2 id="changes-title">${t('web.explore.changes')}</h2>
      <div class="scroller"><table>
        <thead><tr><th scope="col"></th>${COLUMNS.map(({ name, unit }) => html`
          <th class="n" scope="col">${t(`web.explore.short.${name}`)}<br /><span class="unit">${t(`web.explore.unit.${unit}`)}</span></th>`)}</tr></thead>
        <tbody>${rows.map((i) => html`
          <tr><th scope="row">${rowName(wing.one_more[i])}</th>
            ${COLUMNS.map(({ key, decimals, over }) => html`<td class="n"><${Num} wing=${wing} path=${`one_more.${i}.${key}`} decimals=${decimals} over=${over} signed /></td>`)}</tr>`)}</tbody>
      </table></div>
      <p class="quiet">${t('web.explore.changes_note')}</p>
    </section>`;
}

function rowName({ control, by }) {
  const { name } = INPUTS.find((one) => one.key === control);
  return t('web.explore.more_of', { name: t(`web.number.${name}`), by, unit: unitWord(name) });
}

const unitWord = (name) => {
  const unit = t(`web.unit.${name}`);
  return /^\w/.test(unit) ? `\u00a0${unit}` : unit;
};
