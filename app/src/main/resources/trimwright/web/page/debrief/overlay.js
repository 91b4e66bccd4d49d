// Turns of one kind laid over one another, at the instant at which the apparent wind came to the other side.
import { html, useMemo, useState } from '../dom.js';
import { query } from '../api.js';
import { fixed } from '../format.js';
import { t } from '../text.js';
import { useWork } from '../prepare/work.js';
import { Fault, Waiting } from '../shell.js';

const KINDS = ['tack', 'gybe', 'bear_away', 'round_up'];
const WIDTH = 440;
const HEIGHT = 86;
const LEFT = 38;
const RIGHT = 12;
const FOOT = 14;
/** Steps between lines of a grid. */
const STEPS = [0.2, 0.5, 1, 2, 5, 10, 20, 50, 100];

export function Overlay({ report, against, boat, fleet, view }) {
  const [kind, setKind] = useState(() => mostOf(boat.turns));
  const [own, setOwn] = useState(true);
  const [lit, setLit] = useState(null);
  const { value, fault } = useWork(`/api/sessions/${encodeURIComponent(report.session)}/turns${query({ kind, ...against })}`, []);
  const ready = value?.kind === kind;
  const turns = useMemo(() => (ready ? value.turns.filter((turn) => !own || turn.boat === boat.boat) : []), [value, own, boat]);
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
        ${value.rows.map((row) => html`<${Lane} key=${row} row=${row} value=${value} turns=${turns} fleet=${fleet} lit=${lit} onLit=${setLit} onShow=${show} />`)}
        <${List} turns=${turns} fleet=${fleet} lit=${lit} onLit=${setLit} onShow=${show} clock=${view} />
      </div>
      <p class="quiet">${t('web.turns.note')}</p>`}`;
}

/** The kind that a boat made most of; where none, a tack. */
function mostOf(turns) {
  const count = (kind) => turns.filter((turn) => turn.kind === kind).length;
  return KINDS.reduce((best, kind) => (count(kind) > count(best) ? kind : best), KINDS[0]);
}

const nameOf = (turn) => `${turn.boat} ${turn.turn}`;

function Lane({ row, value, turns, fleet, lit, onLit, onShow }) {
  const with_ = turns.filter((turn) => turn.values[row]?.some((one) => one !== null));
  if (with_.length === 0) return null;
  const all = with_.flatMap((turn) => turn.values[row]).filter((one) => one !== null);
  const least = Math.min(...all);
  const most = Math.max(...all, least + 1e-6);
  const count = with_[0].values[row].length;
  const x = (i) => LEFT + ((WIDTH - LEFT - RIGHT) * i) / (count - 1);
  const y = (one) => 4 + ((HEIGHT - FOOT - 8) * (most - one)) / (most - least);
  const seconds = [-10, 0, 10, 20, 30];
  const place = (s) => x((s + value.before_s) / value.step_s);
  const step = STEPS.find((one) => (most - least) / one <= 3) ?? 200;
  const ticks = [];
  for (let tick = Math.ceil(least / step) * step; tick <= most; tick += step) ticks.push(tick);
  const drawn = [...with_].sort((a, b) => (nameOf(a) === lit) - (nameOf(b) === lit));
  return html`
    <h3>${t(`web.turns.row.${row}`)}</h3>
    <svg class="overlay" viewBox=${`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label=${t(`web.turns.row.${row}`)}>
      ${ticks.map((tick) => html`<line class="grid" x1=${LEFT} x2=${WIDTH - RIGHT} y1=${y(tick)} y2=${y(tick)} /><text x=${LEFT - 4} y=${y(tick) + 4} text-anchor="end">${Number(tick.toFixed(1))}</text>`)}
      ${seconds.map((s) => html`<line class=${s === 0 ? 'nought' : 'grid'} x1=${place(s)} x2=${place(s)} y1="4" y2=${HEIGHT - FOOT} /><text x=${place(s)} y=${HEIGHT - 2} text-anchor="middle">${s}</text>`)}
      ${drawn.map((turn) => html`<polyline key=${nameOf(turn)} class=${nameOf(turn) === lit ? 'turn lit' : 'turn'} points=${points(turn.values[row], x, y)}
        stroke=${fleet.of(turn.boat).colour} stroke-dasharray=${fleet.of(turn.boat).dash.join(' ')} onPointerEnter=${() => onLit(nameOf(turn))} onClick=${() => onShow(turn)}><title>${nameOf(turn)}</title></polyline>`)}
    </svg>`;
}

const points = (values, x, y) => values.map((one, i) => (one === null ? '' : `${x(i).toFixed(1)},${y(one).toFixed(1)}`)).join(' ');

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
