// Turns of one kind laid over one another, at the instant at which the apparent wind came to the other side.
import { html, useMemo, useState } from '../dom.js';
import { query } from '../api.js';
import { fixed } from '../format.js';
import { t } from '../text.js';
import { useWork } from '../prepare/work.js';
import { Fault, Waiting } from '../shell.js';
import { OverlayLane } from './overlaylane.js';

const KINDS = ['tack', 'gybe', 'bear_away', 'round_up'];
const SECONDS = [-10, 0, 10, 20, 30];

export function Overlay({ report, against, boat, fleet, view }) {
  const [kind, setKind] = useState(() => mostOf(boat.turns));
  const [own, setOwn] = useState(true);
  const [lit, setLit] = useState(null);
  const { value, fault } = useWork(`/api/sessions/${encodeURIComponent(report.session)}/turns${query({ kind, ...against })}`, []);
  const ready = value?.kind === kind;
  const turns = useMemo(() => (ready ? value.turns.filter((turn) => !own || turn.boat === boat.boat) : []), [value, own, boat]);
  const lines = useMemo(() => turns.map((turn) => ({ id: nameOf(turn), values: turn.values, ink: fleet.of(turn.boat), turn })), [turns, fleet]);
  if (fault) return html`<${Fault} fault=${fault} />`;
  const show = (turn) => view.show(view.whole.from + turn.at_s - value.before_s, view.whole.from + turn.at_s + 2 * value.before_s);
  return html`
    <div class="overlay-head">
      <label class="field">${t('web.turns.kind')} <select name="kind" value=${kind} onChange=${(e) => setKind(e.target.value)}>
        ${KINDS.map((one) => html`<option value=${one}>${t(`debrief.kind.${one}`)}</option>`)}</select></label>
      <label class="field">${t('web.turns.whose')} <select name="whose" value=${own ? 'own' : 'all'} onChange=${(e) => setOwn(e.target.value === 'own')}>
        <option value="own">${t('web.turns.own')}</option><option value="all">${t('web.turns.all')}</option></select></label>
    </div>
    ${!ready && html`<${Waiting} text=${t('web.debrief.making')} />`}
    ${ready && turns.length === 0 && html`<p class="quiet">${t('web.turns.none')}</p>`}
    ${ready && turns.length > 0 && html`
      <div onPointerLeave=${() => setLit(null)}>
        ${value.rows.map((row) => html`<${OverlayLane} key=${row} row=${row} name=${t(`web.turns.row.${row}`)} value=${value} seconds=${SECONDS} lines=${lines} lit=${lit} onLit=${setLit} onPick=${(line) => show(line.turn)} />`)}
        <${List} turns=${turns} fleet=${fleet} lit=${lit} onLit=${setLit} onShow=${show} clock=${view} />
      </div>
      <p class="quiet">${t('web.turns.note')}</p>
      <${Planned} turns=${turns} fleet=${fleet} />`}`;
}

/** The kind that a boat made most of; where none, a tack. */
function mostOf(turns) {
  const count = (kind) => turns.filter((turn) => turn.kind === kind).length;
  return KINDS.reduce((best, kind) => (count(kind) > count(best) ? kind : best), KINDS[0]);
}

const nameOf = (turn) => `${turn.boat} ${turn.turn}`;

/** What each turn did beside the kept plan of its kind and wind; nothing where none is kept. */
function Planned({ turns, fleet }) {
  const planned = turns.filter((turn) => turn.plan);
  return planned.length > 0 && html`
    <h3>${t('web.turns.plans')}</h3>
    <ul class="planned">${planned.map((turn) => html`<li key=${nameOf(turn)}><b>${fleet.of(turn.boat).letter} ${turn.turn}</b> ${turn.plan.title}: ${turn.plan.said}</li>`)}</ul>`;
}

/** The turns, those that cost least first. */
function List({ turns, fleet, lit, onLit, onShow, clock: view }) {
  const cost = (turn) => turn.lost_m ?? Infinity;
  const sorted = [...turns].sort((a, b) => cost(a) - cost(b));
  return html`
    <table>
      <thead><tr><th>${t('web.debrief.at')}</th><th>${t('web.debrief.turn')}</th><th class="n">${t('web.debrief.lost_m')}</th><th>${t('web.debrief.foils')}</th><th>${t('web.turns.over')}</th><th class="n">${t('web.turns.camber_after')}</th></tr></thead>
      <tbody>${sorted.map((turn) => html`
        <tr key=${nameOf(turn)} class=${nameOf(turn) === lit ? 'pick chosen' : 'pick'} tabindex="0" onPointerEnter=${() => onLit(nameOf(turn))} onFocus=${() => onLit(nameOf(turn))}
          onClick=${() => onShow(turn)} onKeyDown=${(e) => e.key === 'Enter' && onShow(turn)}>
          <td>${view.clock.timeOfDay(view.whole.from + turn.at_s)}</td><td>${fleet.of(turn.boat).letter} ${turn.turn}</td><td class="n">${fixed(turn.lost_m, 0)}</td>
          <td>${turn.touched_down === null ? '\u2013' : t(turn.touched_down ? 'web.debrief.touched' : 'web.debrief.stayed_up')}</td>
          <td>${turn.wind_over ? t(`web.turns.${turn.wind_over}`) : '\u2013'}</td><td class="n">${fixed(turn.camber_after_wind_s, 1)}</td></tr>`)}</tbody>
    </table>`;
}
