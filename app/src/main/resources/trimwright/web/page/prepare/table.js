// The chosen wind's points as a table.
import { html } from '../dom.js';
import { choose } from '../address.js';
import { fixed } from '../format.js';
import { t, wordFor } from '../text.js';

export function LaneTable({ lane, chosen }) {
  if (!lane) return null;
  const rows = [...lane.points, ...lane.unsolved].sort((a, b) => a.twa_deg - b.twa_deg);
  const pick = (point) => choose({ tws: point.tws_kn, twa: point.twa_deg, mode: point.mode === 'angle' ? null : point.mode });
  return html`
    <section class="panel lane-table" aria-labelledby="table-title">
      <h2 id="table-title">${t('web.prepare.table_title', { tws: fixed(lane.tws, 0) })}</h2>
      <div class="scroller">
        <table>
          <thead><tr>
            ${['twa', 'boat_speed', 'vmg', 'awa', 'aws', 'camber', 'twist', 'sheet', 'heel', 'ride_height', 'leeway', 'sheet_load', 'righting_moment'].map((name) =>
              html`<th class="n" scope="col">${t(`web.number.${name}`)}<br /><span class="unit">${t(`web.unit.${name}`)}</span></th>`)}
            <th scope="col">${t('web.prepare.sailed')}</th><th scope="col">${t('web.prepare.limits')}</th>
          </tr></thead>
          <tbody>${rows.map((point) => (point.solved
            ? html`<${Row} key=${`${point.mode}${point.twa_deg}`} point=${point} chosen=${point === chosen} pick=${pick} />`
            : html`<tr><td class="n">${fixed(point.twa_deg, 0)}</td><td colspan="14" class="wrap quiet">${point.reason}</td></tr>`))}</tbody>
        </table>
      </div>
    </section>`;
}

function Row({ point, chosen, pick }) {
  const best = point.mode !== 'angle';
  return html`
    <tr class=${chosen ? 'pick chosen' : 'pick'} onClick=${() => pick(point)}>
      <td class="n">${best ? html`<b>${point.mode === 'upwind' ? '\u25b2' : '\u25bc'} ${fixed(point.twa_deg, 1)}</b>` : fixed(point.twa_deg, 0)}</td>
      <td class="n">${fixed(point.boat_speed_kn)}</td><td class="n">${fixed(point.vmg_kn)}</td>
      <td class="n">${fixed(point.awa_deg)}</td><td class="n">${fixed(point.aws_kn)}</td>
      <td class="n">${fixed(point.camber_deg)}</td><td class="n">${fixed(point.twist_deg)}</td><td class="n">${fixed(point.sheet_deg)}</td>
      <td class="n">${fixed(point.heel_deg)}</td><td class="n">${fixed(point.ride_height_m, 2)}</td><td class="n">${fixed(point.leeway_deg)}</td>
      <td class="n">${fixed(point.sheet_load_n / 1000, 2)}</td><td class="n">${fixed(100 * point.righting_moment_ratio, 0)}</td>
      <td>${t(point.foiling ? 'web.prepare.foiling' : 'web.prepare.on_hulls')}</td>
      <td>${point.limits.map((key) => wordFor(`web.limit_short.${key}`, key)).join(', ')}</td>
    </tr>`;
}
