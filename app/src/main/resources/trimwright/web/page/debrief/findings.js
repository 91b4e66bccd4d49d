// What the debrief found, in lists: a click on a line shows that stretch in the chart.
import { html, useState } from '../dom.js';
import { duration, fixed, percent } from '../format.js';
import { t, wordFor } from '../text.js';
import { useStore } from '../store.js';
import { channelName } from './lane.js';
import { MARKS, Reason } from './marks.js';

const TABS = ['phases', 'turns', 'legs', 'data', 'doubts'];

export function Findings({ boat, pieces, view }) {
  const [tab, setTab] = useState('phases');
  useStore(view.clock);
  const counts = { phases: boat.phases.length, turns: boat.turns.length, legs: boat.legs.length, data: boat.quality.channels.length, doubts: boat.caveats.length };
  const move = (event) => {
    const step = { ArrowLeft: -1, ArrowRight: 1 }[event.key];
    if (!step) return;
    event.preventDefault();
    const next = TABS[(TABS.indexOf(tab) + step + TABS.length) % TABS.length];
    setTab(next);
    document.getElementById(`tab-${next}`).focus();
  };
  const List = { phases: Phases, turns: Turns, legs: Legs, data: Data, doubts: Doubts }[tab];
  return html`
    <section class="panel findings">
      <div class="tabs" role="tablist" aria-label=${t('web.debrief.findings')} onKeyDown=${move}>
        ${TABS.map((one) => html`
          <button id=${`tab-${one}`} role="tab" aria-selected=${one === tab ? 'true' : 'false'} aria-controls="tab-panel" tabindex=${one === tab ? 0 : -1}
            onClick=${() => setTab(one)}>${t(`web.debrief.tab.${one}`)} <span class="count">${counts[one]}</span></button>`)}
      </div>
      <div class="scroller" id="tab-panel" role="tabpanel" aria-labelledby=${`tab-${tab}`} tabindex="0">
        <${List} boat=${boat} pieces=${pieces} view=${view} />
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
  const against = boat.reference === 'target' ? 'web.debrief.against_target' : 'web.debrief.against_own_best';
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

function Turns({ pieces, view }) {
  const turns = pieces.filter((piece) => piece.group === 'turn');
  if (!turns.length) return html`<p class="quiet">${t('web.debrief.no_turns')}</p>`;
  return html`
    <table>
      <thead><tr><th>${t('web.debrief.at')}</th><th>${t('web.debrief.turn')}</th><th class="n">${t('web.debrief.length')}</th>
        <th class="n">${t('web.debrief.in')}</th><th class="n">${t('web.debrief.least')}</th><th class="n">${t('web.debrief.out')}</th>
        <th class="n">${t('web.debrief.lost_m')}</th></tr></thead>
      <tbody>${turns.map((piece) => html`
        <${Line} key=${piece.from} piece=${piece} view=${view}>
          <td>${view.clock.timeOfDay(piece.from)}</td><td>${kindOf(piece.record)} ${t('web.debrief.from_side', { side: sideOf(piece.record.entry_tack) })}</td>
          <td class="n">${duration(piece.record.duration_s)}</td><td class="n">${fixed(piece.record.entry_speed_kn)}</td>
          <td class="n">${fixed(piece.record.minimum_speed_kn)}</td><td class="n">${fixed(piece.record.exit_speed_kn)}</td>
          <td class="n">${fixed(piece.record.lost_m, 0)}${piece.record.vmg_came_back === false ? '+' : ''}</td>
        <//>`)}</tbody>
    </table>
    <p class="quiet">${t('web.debrief.turns_note')}</p>`;
}

/** Legs with the seconds lost on each, by cause. */
function Legs({ boat, pieces, view }) {
  const legs = pieces.filter((piece) => piece.group === 'leg');
  if (!legs.length) return html`<p class="quiet">${t('web.debrief.no_legs')}</p>`;
  return html`
    <p class="quiet">${t('web.debrief.ledger_note')}</p>
    <table>
      <thead><tr><th>${t('web.debrief.at')}</th><th>${t('web.debrief.sail')}</th><th class="n">${t('web.debrief.length')}</th>
        <th class="n">${t('web.debrief.lost_s')}</th><th>${t('web.debrief.through')}</th></tr></thead>
      <tbody>${legs.map((piece) => {
        const account = boat.ledger.find((one) => one.leg === piece.record.leg);
        return html`
          <${Line} key=${piece.from} piece=${piece} view=${view}>
            <td>${view.clock.timeOfDay(piece.from)}</td><td>${kindOf(piece.record)}</td><td class="n">${duration(piece.record.duration_s)}</td>
            <td class="n"><b>${account ? fixed(account.total_s) : '\u2013'}</b></td>
            <td><dl class="account">${account?.lines.map((line) => html`<div><dt>${wordFor(`web.cause.${line.cause}`, line.cause)}</dt><dd>${fixed(line.loss_s)}</dd></div>`)}</dl></td>
          <//>`;
      })}</tbody>
    </table>`;
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
