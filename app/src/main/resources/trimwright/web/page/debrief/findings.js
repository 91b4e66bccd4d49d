// What the debrief found, in lists: a click on a line shows that stretch in the chart.
import { html, useState } from '../dom.js';
import { duration, fixed, percent } from '../format.js';
import { t, wordFor } from '../text.js';
import { useStore } from '../store.js';
import { Account } from './account.js';
import { Instruments } from './instruments.js';
import { channelName } from './lane.js';
import { Moments } from './moments.js';
import { MARKS, Reason } from './marks.js';
import { Otherwise } from './otherwise.js';
import { Overlay } from './overlay.js';
import { Starts } from './starts.js';

/** Lists whose numbers depend on the targets. */
const JUDGED = ['account', 'phases'];
const TABS = ['account', 'boats', 'start', 'turns', 'phases', 'moments', 'instruments', 'data', 'doubts'];

export function Findings({ report, against, boat, fleet, pieces, view, tab, setTab, onFocus, onCalibrated }) {
  useStore(view.clock);
  const tabs = TABS.filter((one) => (one !== 'boats' || report.fleet) && (one !== 'start' || report.boats.some((other) => other.start)));
  const counts = { boats: report.fleet ? report.fleet.findings.length : 0, account: boat.ledger.length, phases: boat.phases.length, turns: boat.turns.length, data: boat.quality.channels.length, doubts: boat.caveats.length };
  const move = (event) => {
    const step = { ArrowLeft: -1, ArrowRight: 1 }[event.key];
    if (!step) return;
    event.preventDefault();
    const next = tabs[(tabs.indexOf(tab) + step + tabs.length) % tabs.length];
    setTab(next);
    document.getElementById(`tab-${next}`).focus();
  };
  const List = { account: Account, boats: Otherwise, start: Starts, phases: Phases, turns: Turns, moments: Moments, instruments: Instruments, data: Data, doubts: Doubts }[tab];
  return html`
    <section class="panel findings">
      <div class="tabs" role="tablist" aria-label=${t('web.debrief.findings')} onKeyDown=${move}>
        ${tabs.map((one) => html`
          <button id=${`tab-${one}`} role="tab" aria-selected=${one === tab ? 'true' : 'false'} aria-controls="tab-panel" tabindex=${one === tab ? 0 : -1}
            onClick=${() => setTab(one)}>${t(`web.debrief.tab.${one}`)} ${one in counts && html`<span class="count">${counts[one]}</span>`}</button>`)}
      </div>
      <div class="scroller" id="tab-panel" role="tabpanel" aria-labelledby=${`tab-${tab}`} tabindex="0">
        ${report.section && JUDGED.includes(tab) && html`<p class="quiet" id="section">${t(`web.debrief.section.${report.section}`)}</p>`}
        <${List} key=${tab} report=${report} against=${against} boat=${boat} fleet=${fleet} pieces=${pieces} view=${view} onFocus=${onFocus} onCalibrated=${onCalibrated} />
      </div>
    </section>`;
}

/** A line for a piece: shown by click or Enter, marked until the chart is moved. */
function Line({ piece, view, children }) {
  const shown = useStore(view).piece === piece;
  const show = () => view.showPiece(piece);
  return html`
    <tr class=${shown ? 'pick chosen' : 'pick'} tabindex="0" onClick=${show} onKeyDown=${(e) => e.key === 'Enter' && show()}>${children}</tr>`;
}

const kindOf = (record) => wordFor(`debrief.kind.${record.kind}`, record.kind);
const sideOf = (tack) => t(tack === 'port' ? 'web.side.port' : 'web.side.starboard');

function Phases({ boat, pieces, view }) {
  const phases = pieces.filter((piece) => piece.group === 'phase');
  const against = `web.debrief.against_${boat.reference}`;
  return html`
    <p class="quiet">${t(against)}</p>
    ${phases.length === 0 ? html`<p class="quiet">${t('web.debrief.no_phases')}</p>` : html`
    <table>
      <thead><tr><th>${t('web.debrief.at')}</th><th>${t('web.debrief.sail')}</th><th class="n">${t('web.debrief.length')}</th>
        <th class="n">${t('web.number.tws')}</th><th class="n">${t('web.number.twa')}</th><th class="n">${t('web.debrief.speed')}</th>
        <th class="n">${t('web.debrief.difference')}</th></tr></thead>
      <tbody>${phases.map((piece) => html`
        <${Line} key=${piece.from} piece=${piece} view=${view}>
          <td>${view.clock.timeOfDay(piece.from)}</td><td>${kindOf(piece.record)} ${sideOf(piece.record.tack)}</td>
          <td class="n">${duration(piece.record.duration_s)}</td><td class="n">${fixed(piece.record.tws_kn)}</td>
          <td class="n">${fixed(piece.record.twa_deg, 0)}\u00b0</td><td class="n">${fixed(piece.record.boat_speed_kn)}</td>
          <td class="n"><${Difference} record=${piece.record} /></td>
        <//>`)}</tbody>
    </table>`}`;
}

/** Progress less that of the reference, with its interval; a doubtful one carries a question mark. */
function Difference({ record }) {
  if (record.difference_kn === null) return '\u2013';
  const sign = record.difference_kn > 0 ? '+' : '';
  const doubts = record.caveats.map((key) => wordFor(`web.compare.${key}`, key)).join(' ');
  return html`<span title=${doubts}><b>${sign}${fixed(record.difference_kn, 2)}</b>${doubts && '?'}<br />
    <span class="quiet">${fixed(record.difference_low_kn, 2)} ${t('web.debrief.to')} ${fixed(record.difference_high_kn, 2)}</span></span>`;
}

/** Turns with what forced them, what they cost, and whether the boat stayed on its foils. */
function Turns({ report, against, boat, fleet, pieces, view }) {
  const [over, setOver] = useState(false);
  const turns = pieces.filter((piece) => piece.group === 'turn');
  if (!turns.length) return html`<p class="quiet">${t('web.debrief.no_turns')}</p>`;
  const labelled = boat.turns.some((turn) => turn.label);
  const told = boat.turns.some((turn) => turn.touched_down !== null && turn.touched_down !== undefined);
  const other = html`<p><button name="overlay" onClick=${() => setOver(!over)}>${t(over ? 'web.turns.hide' : 'web.turns.show')}</button></p>`;
  if (over) return html`${other}<${Overlay} report=${report} against=${against} boat=${boat} fleet=${fleet} view=${view} />`;
  return html`
    ${other}
    <table>
      <thead><tr><th>${t('web.debrief.at')}</th><th>${t('web.debrief.turn')}</th>${labelled && html`<th>${t('web.debrief.for')}</th>`}
        <th class="n">${t('web.debrief.in')}</th><th class="n">${t('web.debrief.least')}</th><th class="n">${t('web.debrief.out')}</th>
        <th class="n">${t('web.debrief.lost_m')}</th>${told && html`<th>${t('web.debrief.foils')}</th>`}</tr></thead>
      <tbody>${turns.map((piece) => html`
        <${Line} key=${piece.from} piece=${piece} view=${view}>
          <td>${view.clock.timeOfDay(piece.from)}<br /><span class="quiet">${duration(piece.record.duration_s)}</span></td><td>${kindOf(piece.record)}<br /><span class="quiet">${t('web.debrief.from_side', { side: sideOf(piece.record.entry_tack) })}</span></td>
          ${labelled && html`<td>${piece.record.label ? wordFor(`debrief.label.${piece.record.label}`, piece.record.label) : '\u2013'}</td>`}
          <td class="n">${fixed(piece.record.entry_speed_kn)}</td>
          <td class="n">${fixed(piece.record.minimum_speed_kn)}</td><td class="n">${fixed(piece.record.exit_speed_kn)}</td>
          <td class="n">${fixed(piece.record.lost_m, 0)}${piece.record.vmg_came_back === false ? '+' : ''}</td>
          ${told && html`<td>${piece.record.touched_down ? html`<b>${t('web.debrief.touched')}</b>` : t('web.debrief.stayed_up')}</td>`}
        <//>`)}</tbody>
    </table>
    <p class="quiet">${t('web.debrief.turns_note')}</p>`;
}

/** What is known of each channel. */
function Data({ boat }) {
  return html`
    <table>
      <thead><tr><th>${t('web.debrief.channel')}</th><th class="n">${t('web.debrief.rate')}</th><th class="n">${t('web.debrief.covered')}</th>
        <th class="n">${t('web.debrief.gaps')}</th><th>${t('web.debrief.marked')}</th></tr></thead>
      <tbody>${[...boat.quality.channels].sort((a, b) => channelName(a.channel).localeCompare(channelName(b.channel), 'en')).map((one) => html`
        <tr><td class="wrap">${channelName(one.channel)}</td><td class="n">${fixed(one.rate_hz)}</td><td class="n">${percent(one.coverage_ratio)}</td>
          <td class="n">${one.gaps ? `${one.gaps}, ${duration(one.longest_gap_s)}` : '0'}</td>
          <td class="wrap">${MARKS.filter(({ key }) => one[key] > 0).map((mark) => html`<span class="marked">${one[mark.key].toLocaleString('en-GB')} <${Reason} mark=${mark} /></span>`)}</td></tr>`)}</tbody>
    </table>
    <p class="quiet">${t('web.debrief.gaps_note')}</p>`;
}

/** What a reader must be told before using the figures. */
function Doubts({ boat }) {
  return html`
    <p class="basis">${t(`debrief.speed.${boat.speed_source}`).replace('%s', wordFor(`debrief.reason.${boat.speed_reason}`, boat.speed_reason))}</p>
    <ul class="plainlist doubt">
      ${boat.caveats.map((key) => html`<li>${wordFor(`debrief.caveat.${key}`, key)}</li>`)}
    </ul>`;
}
