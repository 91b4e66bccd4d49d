// The trim card on a whole screen: the printed card's words, black on white, large.
import { html, useRef } from '../dom.js';
import { choose, follow } from '../address.js';
import { query } from '../api.js';
import { t } from '../text.js';
import { Fault, Waiting } from '../shell.js';
import { useWork } from '../prepare/work.js';

export function Place({ choice }) {
  const card = useRef(null);
  const asked = { boat: choice.boat ?? 'whimbrel14', wing: choice.wing ?? 'tall', tws_kn: choice.tws ?? '8,12,16,20,24', turbulence_percent: choice.turbulence };
  const { value, fault } = useWork(`/api/card${query(asked)}`, []);
  if (fault) return html`<${Fault} fault=${fault} />`;
  if (!value) return html`<${Waiting} text=${t('web.cards.working')} />`;
  const side = value.sides.find((one) => one.side === choice.side) ?? value.sides[0];
  const next = value.sides[(value.sides.indexOf(side) + 1) % value.sides.length];
  return html`
    <p class="bar">
      <button onClick=${() => card.current.requestFullscreen()}>${t('web.cards.full')}</button>
      <button onClick=${() => choose({ side: next.side })}>${t('web.cards.next', { name: next.name })}</button>
      <a href=${`/api/card.pdf${query(asked)}`} download>PDF</a>
      <a href=${`/prepare${query({ boat: asked.boat, wing: asked.wing, turbulence: choice.turbulence })}`} onClick=${follow}>${t('web.cards.back')}</a>
    </p>
    <div class="trim-card" ref=${card} onClick=${() => document.fullscreenElement && choose({ side: next.side })}>
      <div class="card-head"><h1>${side.title}</h1><span class="small">${value.date}</span></div>
      <table>
        <thead><tr>${side.head.map((name) => html`<th scope="col">${name}</th>`)}</tr></thead>
        <tbody>${side.rows.map((row) => html`
          <tr>
            <td><span class="main">${row.wind}</span><span class="small">${row.how}</span></td>
            ${row.reason
              ? html`<td colspan=${side.head.length - 1}><span class="below">${row.reason}</span></td>`
              : row.cells.map((cell) => html`<td><span class="main">${cell.main}</span><span class="below">${cell.below}</span></td>`)}
          </tr>`)}</tbody>
      </table>
      <p class="small">${side.notes.join(';  ')}</p>
      <p class="small">${side.remark} ${value.caution} ${value.origin}</p>
    </div>`;
}
