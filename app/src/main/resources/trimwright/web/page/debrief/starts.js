// The start: the last minute and a half of every boat, in metres and seconds to the line.
import { html, useState } from '../dom.js';
import { query } from '../api.js';
import { fixed } from '../format.js';
import { t } from '../text.js';
import { useWork } from '../prepare/work.js';
import { Fault, Waiting } from '../shell.js';
import { OverlayLane } from './overlaylane.js';

const SECONDS = [-90, -75, -60, -45, -30, -15, 0, 15];

export function Starts({ report, against, fleet, view, onFocus }) {
  const [lit, setLit] = useState(null);
  const { value, fault } = useWork(`/api/sessions/${encodeURIComponent(report.session)}/starts${query(against)}`, []);
  if (fault) return html`<${Fault} fault=${fault} />`;
  if (!value) return html`<${Waiting} text=${t('web.debrief.making')} />`;
  if (value.starts.length === 0) return html`<p class="quiet">${t('web.starts.none')}</p>`;
  const lines = value.starts.map((start) => ({ id: start.boat, values: start.values, ink: fleet.of(start.boat) }));
  const pick = (boat) => {
    const gun = view.whole.from + value.starts[0].at_s;
    onFocus(boat);
    view.show(gun - value.before_s, gun + 20);
  };
  const sorted = [...value.starts].sort((a, b) => a.crossed_s - b.crossed_s);
  return html`
    <table onPointerLeave=${() => setLit(null)}>
      <thead><tr><th>${t('web.quick.boat')}</th><th class="n">${t('web.starts.after')}</th><th class="n">${t('web.starts.speed')}</th><th class="n">${t('web.starts.target')}</th></tr></thead>
      <tbody>${sorted.map((start) => html`
        <tr class=${start.boat === lit ? 'pick chosen' : 'pick'} tabindex="0" onPointerEnter=${() => setLit(start.boat)} onFocus=${() => setLit(start.boat)} onClick=${() => pick(start.boat)} onKeyDown=${(e) => e.key === 'Enter' && pick(start.boat)}>
          <td><svg class="key" viewBox="0 0 30 8" width="30" height="8" aria-hidden="true"><line x1="0" x2="30" y1="4" y2="4" stroke=${fleet.of(start.boat).colour} stroke-width="2.5" stroke-dasharray=${fleet.of(start.boat).dash.join(' ')} /></svg> ${start.boat}</td>
          <td class="n">${fixed(start.crossed_s)}${start.early && html` <b>${t('web.starts.early')}</b>`}</td><td class="n">${fixed(start.speed_kn)}</td>
          <td class="n">${start.target_ratio === null ? '\u2013' : `${fixed(100 * start.target_ratio, 0)} %`}</td></tr>`)}</tbody>
    </table>
    <div onPointerLeave=${() => setLit(null)}>
      ${value.rows.map((row) => html`<${OverlayLane} key=${row} row=${row} name=${t(`web.starts.row.${row}`)} value=${value} seconds=${SECONDS} lines=${lines} lit=${lit} onLit=${setLit} onPick=${(line) => pick(line.id)} />`)}
    </div>
    <p class="quiet">${t('web.starts.note')}</p>`;
}
