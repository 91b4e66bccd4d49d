// What boats did otherwise than the others in the same wind at the same moment: sentences, and progress with its interval.
import { html } from '../dom.js';
import { fixed } from '../format.js';
import { t, wordFor } from '../text.js';
import { useStore } from '../store.js';

/** @param {{report: any, fleet: any, view: any, onFocus: (name: string) => void}} props */
export function Otherwise({ report, fleet, view, onFocus }) {
  const found = report.fleet;
  const shown = useStore(view).piece;
  const start = Date.parse(report.start_utc) / 1000;
  const pieceOf = (one) => (one.start_s === null ? null : { group: 'fleet', kind: one.kind, from: start + one.start_s, to: start + one.start_s + one.duration_s, record: one });
  const pieces = found.findings.map(pieceOf);
  const show = (i) => {
    onFocus(found.findings[i].boat);
    if (pieces[i]) view.showPiece(pieces[i]);
  };
  return html`
    <p class="quiet">${t('web.debrief.found')}</p>
    ${found.findings.length === 0 ? html`<p>${found.nothing}</p>` : html`
      <table><tbody>${found.findings.map((one, i) => html`
        <tr key=${one.sentence} class=${shown && shown.record === one ? 'pick chosen' : 'pick'} tabindex="0"
          onClick=${() => show(i)} onKeyDown=${(e) => e.key === 'Enter' && show(i)}>
          <td><b>${fleet.of(one.boat).letter}</b></td><td class="wrap">${one.sentence}</td></tr>`)}</tbody></table>
      <p class="quiet">${t('debrief.found.note')} ${t('web.debrief.found_shows')}</p>`}
    ${['upwind', 'downwind'].map((kind) => html`<${Progress} key=${kind} kind=${kind} fleet=${fleet}
      rows=${found.differences.filter((one) => one.question === 'progress' && one.kind === kind)} />`)}`;
}

const WIDE = 220;
const HIGH = 18;

/** A dot for each boat and a line as long as its interval, nothing in the middle. */
function Progress({ kind, rows, fleet }) {
  if (rows.length === 0) return null;
  const most = Math.max(...rows.map((one) => Math.max(Math.abs(one.low_kn), Math.abs(one.high_kn))), 0.1);
  const x = (value) => WIDE / 2 + (value / most) * (WIDE / 2 - 8);
  return html`
    <p class="quiet">${wordFor(`debrief.found.way.${kind}`, kind)}: ${t('web.debrief.found_progress')}</p>
    <table><tbody>${rows.map((one) => html`
      <tr key=${one.boat}><td>${one.boat}</td>
        <td class="n">${one.value_kn > 0 ? '+' : ''}${fixed(one.value_kn, 1)} <span class="quiet">(${fixed(one.low_kn, 1)} ${t('web.debrief.to')} ${fixed(one.high_kn, 1)})</span></td>
        <td><${Mark} one=${one} x=${x} colour=${fleet.of(one.boat).colour} /></td>
        <td>${one.told ? t('web.debrief.found_told') : ''}</td></tr>`)}</tbody></table>`;
}

function Mark({ one, x, colour }) {
  return html`
    <svg width=${WIDE} height=${HIGH} aria-hidden="true">
      <line x1=${WIDE / 2} x2=${WIDE / 2} y1="0" y2=${HIGH} stroke="currentColor" stroke-opacity="0.4" />
      <g stroke=${colour} fill=${colour}>
        <line x1=${x(one.low_kn)} x2=${x(one.high_kn)} y1=${HIGH / 2} y2=${HIGH / 2} stroke-width=${one.told ? 3 : 1.5} />
        <circle cx=${x(one.value_kn)} cy=${HIGH / 2} r="4" fill-opacity=${one.told ? 1 : 0.35} />
      </g>
    </svg>`;
}
