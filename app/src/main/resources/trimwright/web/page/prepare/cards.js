// Cards for the boat: the trim card to print, and what gusts, loads and light wind ask for, computed when looked at.
import { html, useState } from '../dom.js';
import { query } from '../api.js';
import { follow } from '../address.js';
import { fixed, degrees, percent } from '../format.js';
import { t } from '../text.js';
import { Fault, Waiting } from '../shell.js';
import { addressOf } from '../explore/inputs.js';
import { useWork } from './work.js';

/** Winds of a card to print, five at most. */
const RANGES = { light: '6,8,10,12,14', all: '8,12,16,20,24', fresh: '14,16,18,20,22' };

export function Cards({ boat, wing, point, section, turbulence }) {
  if (!point) return null;
  const at = { boat: boat.id, wing: wing.id, turbulence_percent: turbulence };
  const here = { ...at, tws_kn: point.tws_kn };
  const gust = `/api/gust${query({ ...here, twa_deg: point.mode === 'angle' ? point.twa_deg : null })}`;
  return html`
    <section class="panel cards" aria-labelledby="cards-title">
      <h2 id="cards-title">${t('web.cards.title')}</h2>
      <p>${t('web.cards.print')}
        ${Object.entries(RANGES).map(([name, winds]) => html`
          ${' '}<a href=${`/api/card.pdf${query({ ...at, tws_kn: winds })}`} download>${t(`web.cards.print_${name}`)}</a>`)}
        ${t('web.cards.screen')}
        ${Object.entries(RANGES).map(([name, winds]) => html`
          ${' '}<a href=${`/card${query({ boat: boat.id, wing: wing.id, turbulence, tws: winds })}`} onClick=${follow}>${t(`web.cards.print_${name}`)}</a>`)}</p>
      <${Card} id="gust" title=${t('web.cards.gust', { tws: fixed(point.tws_kn, 0), twa: fixed(point.twa_deg, 0) })}
        path=${gust} made=${`${boat.hash} ${section}`} show=${(doc) => html`<${Gusts} doc=${doc} boat=${boat} wing=${wing} point=${point} />`} />
      <${Card} id="loads" title=${t('web.cards.loads', { tws: fixed(point.tws_kn, 0) })}
        path=${`/api/loads${query(here)}`} made=${`${boat.hash} ${section}`} show=${(doc) => html`<${Loads} doc=${doc} />`} />
      <${Card} id="takeoff" title=${t('web.cards.takeoff')}
        path=${`/api/takeoff${query(at)}`} made=${`${boat.hash} ${section}`} show=${(doc) => html`<${TakeOffs} doc=${doc} />`} />
    </section>`;
}

function Card({ id, title, path, made, show }) {
  const [open, setOpen] = useState(false);
  const { value, fault } = useWork(open ? path : null, [made]);
  return html`
    <details class="card" id=${`card-${id}`} open=${open} onToggle=${(e) => setOpen(e.currentTarget.open)}>
      <summary>${title}</summary>
      ${open && (fault ? html`<${Fault} fault=${fault} />` : value
        ? html`<div class="scroller">${show(value)}</div><p class="quiet">${value.caution}</p>`
        : html`<${Waiting} text=${t('web.cards.working')} />`)}
    </details>`;
}

const signed = (value, decimals) => `${value > 0 ? '+' : ''}${fixed(value, decimals)}`;

function Head({ names }) {
  return html`<thead><tr>${names.map((name) => html`<th scope="col">${t(`web.cards.head.${name}`)}</th>`)}</tr></thead>`;
}

function Gusts({ doc, boat, wing, point }) {
  const own = doc.points.find((one) => one.mode === point.mode) ?? doc.points[0];
  if (!own) return html`<p class="quiet">${t('web.prepare.no_point')}</p>`;
  return html`
    <table>
      <${Head} names=${['change', 'shift', 'jump', 'sheet_load', 'stall', 'first', 'sheet', 'camber', 'twist', 'steady']} />
      <tbody>${own.gusts.map((gust) => html`
        <tr>
          <td class="n"><a href=${addressOf(boat.id, wing.id, { ...point, tws_kn: point.tws_kn + gust.change_kn })} onClick=${follow}
            title=${t('web.explore.link')}>${signed(gust.change_kn, 0)}</a></td>
          <td class="n">${shift(gust)}</td>
          <td class="n">${signed(gust.jump_nm / 1000, 0)} (${signed(100 * gust.jump_ratio, 0)} %)</td>
          <td class="n">${fixed(gust.sheet_load_at_once_n / 1000, 1)}${gust.sheet_load_over_max ? ` ${t('web.cards.over')}` : ''}</td>
          <td class="n">${degrees(gust.stall_margin_at_once_deg, 0)}</td>
          <td><b>${firstAct(gust)}</b></td>
          ${gust.acts.map((act) => html`<td>${actText(gust, act)}</td>`)}
          <td>${gust.steady ? html`<${Steady} boat=${boat} wing=${wing} point=${point} steady=${gust.steady} />` : t('web.cards.no_steady')}</td>
        </tr>`)}</tbody>
    </table>
    ${own.gusts.some((gust) => gust.in_time.length) && html`<${InTime} gusts=${own.gusts} />`}`;
}

/** The same gusts by the motion model: nobody moving against the first act. */
function InTime({ gusts }) {
  return html`
    <p>${t('web.cards.in_time')}</p>
    <table>
      <${Head} names=${['change', 'shift', 'front_nobody', 'gained', 'front_act', 'grows', 'growing_nobody', 'growing_act', 'peak', 'passing_nobody', 'passing_act']} />
      <tbody>${gusts.filter((gust) => gust.in_time.length).map((gust) => {
        const [front, growing, passing] = ['at_once', 'coherent', 'operating'].map((shape) => gust.in_time.find((one) => one.shape === shape));
        return html`
          <tr>
            <td class="n">${signed(gust.change_kn, 0)}</td><td class="n">${shift(gust)}</td>
            <td>${heels(front.nobody_moves)}</td><td class="n">${signed(front.nobody_moves.boat_speed_gained_kn, 1)}</td>
            <td>${heels(front.first_act)}</td>
            <td class="n">${fixed(growing.length_s, 1)}</td><td>${range(growing.nobody_moves)}</td><td>${range(growing.first_act)}</td>
            <td class="n">${peak(growing.nobody_moves)} / ${peak(growing.first_act)}</td>
            <td>${range(passing.nobody_moves)}</td><td>${range(passing.first_act)}</td>
          </tr>`;
      })}</tbody>
    </table>`;
}

const shift = (gust) => (gust.shift_deg === 0 ? '\u2013' : `${signed(gust.shift_deg, 0)}\u00b0`);

const range = (swing) => t('web.cards.range', { least: fixed(swing.heel_least_deg, 1), most: fixed(swing.heel_most_deg, 1) });

const peak = (swing) => signed(100 * (swing.heeling_moment_peak_ratio - 1), 0);

function firstAct(gust) {
  const act = gust.acts.find((one) => one.control === gust.first);
  const words = act.change_deg === 0 ? t('web.cards.nothing') : t(`web.cards.${act.control}_${act.change_deg > 0 ? 'more' : 'less'}`);
  const why = gust.stalled ? `${words}${t('web.cards.stalls')}` : words;
  return gust.first_in_time ? why : `${why}${t('web.cards.not_in_time')}`;
}

function actText(gust, act) {
  const degrees = `${signed(act.change_deg, 1)}\u00b0`;
  const change = act.change_marks ? `${act.change_marks} (${degrees})` : degrees;
  const share = (gust.heeling_moment_at_once_nm - act.heeling_moment_nm) / gust.jump_nm;
  if (!act.enough && !(share >= 0 && share <= 1)) return t('web.cards.act_all', { change });
  return act.enough
    ? t('web.cards.act', { change, seconds: fixed(act.needs_s, 1), drive: percent(act.drive_ratio) })
    : t('web.cards.act_short', { change, share: percent(share) });
}

function heels(swing) {
  const heel = [swing.heel_after_one_second_deg, swing.heel_after_two_seconds_deg, swing.heel_after_four_seconds_deg]
    .map((one) => fixed(one, 1)).join(', ');
  return swing.past_heel_limit_after_s === null
    ? heel
    : t('web.cards.past_limit', { heel, seconds: fixed(swing.past_heel_limit_after_s, 1) });
}

/** The trim after the gust; Explore opens there with what the target says, the boat lying as before. */
function Steady({ boat, wing, point, steady }) {
  return html`<a href=${addressOf(boat.id, wing.id, { ...point, ...steady })} onClick=${follow}>${t('web.cards.steady', {
    speed: fixed(steady.boat_speed_kn), twa: fixed(steady.twa_deg, 0), camber: fixed(steady.camber_deg, 0),
    twist: fixed(steady.twist_deg, 0), sheet: fixed(steady.sheet_deg, 0),
  })}</a>`;
}

function Loads({ doc }) {
  return html`
    <table>
      <${Head} names=${['mode', 'sheet_load', 'in_hand', 'ease', 'kept_up', 'all_out', 'saving']} />
      <tbody>${doc.rows.map((row) => html`
        <tr>
          <td>${t(`web.prepare.best_${row.mode}`)}</td>
          <td class="n">${fixed(row.sheet_load_n / 1000, 1)} (${percent(row.sheet_load_n / doc.sheet_load_max_n)})</td>
          <td class="n">${fixed(row.hauling_load_n, 0)}</td>
          <td class="n">${fixed(row.ease_s, 1)}</td><td class="n">${fixed(row.haul_kept_up_s, 1)}</td><td class="n">${fixed(row.haul_all_out_s, 1)}</td>
          <td>${row.cheapest_saving ? t('web.cards.saving', {
            camber: fixed(row.cheapest_saving.camber_deg, 0), share: percent(row.cheapest_saving.work_spared_ratio),
            lost: fixed(row.cheapest_saving.speed_lost_kn, 1) }) : t('web.cards.no_saving')}</td>
        </tr>`)}</tbody>
    </table>
    <table>
      <${Head} names=${['fitness', 'supply', 'oil', 'sheet_power', 'haul', 'turn', 'turns', 'fifth', 'rested']} />
      <tbody>${doc.accounts.map((one) => html`
        <tr>
          <td class="n">${percent(one.fitness_ratio)}</td><td class="n">${fixed(one.supply_w, 0)}</td><td class="n">${fixed(one.oil_w, 0)}</td>
          <td class="n">${fixed(one.sheet_w, 0)}</td><td class="n">${fixed(one.haul_rate_deg_per_s, 1)}</td><td class="n">${fixed(one.turn_work_j / 1000, 1)}</td>
          <td class="n"><b>${one.turns_per_lap}</b>${one.short ? ` ${t('web.cards.short')}` : ''}</td>
          <td>${fifth(one)}</td>
          <td class="n">${one.rested_after_s === null ? '\u2013' : fixed(one.rested_after_s, 0)}</td>
        </tr>`)}</tbody>
    </table>
    ${doc.accounts.length > 0 && html`
      <p class="quiet">${doc.source}</p>
      <p>${t('web.cards.hauls')}</p>
      <table>
        <thead><tr><th scope="col">${t('web.cards.head.fitness')}</th>
          ${doc.accounts[0].haul_speeds.map((one) => html`<th scope="col">${fixed(one.sheet_load_n / 1000, 0)} kN</th>`)}</tr></thead>
        <tbody>${doc.accounts.map((account) => html`
          <tr><td class="n">${percent(account.fitness_ratio)}</td>
            ${account.haul_speeds.map((one) => html`<td class="n">${fixed(one.kept_up_deg_per_s, 1)} / ${fixed(one.burst_deg_per_s, 1)}</td>`)}</tr>`)}</tbody>
      </table>`}`;
}

function fifth(account) {
  const best = account.savings.find((one) => one.name === account.cheapest_saving);
  return best ? t('web.cards.fifth', { name: best.name, turns: signed(best.turns_more_per_lap, 1) }) : '\u2013';
}

function TakeOffs({ doc }) {
  const last = doc.stays_up_from;
  return html`
    <table>
      <${Head} names=${['tws', 'stays_up', 'takes_off', 'from_beat', 'from_run', 'upwind', 'downwind']} />
      <tbody>${doc.rows.map((row) => html`
        <tr>
          <td class="n">${fixed(row.tws_kn, 0)}</td>
          <td>${span(row.foiling_twa_deg)}</td><td>${span(row.takes_off_twa_deg)}</td>
          <td>${lift(row.from_beat)}</td><td>${lift(row.from_run)}</td>
          <td>${gain(row.upwind)}</td><td>${gain(row.downwind)}</td>
        </tr>`)}</tbody>
    </table>
    <p>${t('web.cards.takeoff_time')}</p>
    <table>
      <${Head} names=${['tws', 'mode', 'on_hulls', 'gather', 'clear', 'done', 'spent', 'pays', 'lull']} />
      <tbody>${doc.rows.flatMap((row) => ['upwind', 'downwind']
        .filter((mode) => row[mode].on_foils)
        .map((mode) => html`<${TakeOffWay} tws=${row.tws_kn} mode=${mode} way=${row[mode]} />`))}</tbody>
    </table>
    <p>${last ? t('web.cards.last_up', { tws: fixed(last.tws_kn, 1), twa: fixed(last.twa_deg, 0), speed: fixed(last.boat_speed_kn, 1) }) : t('web.cards.never_up')}</p>`;
}

/** A take-off in time one way along the wind, and what a lull asks for there. */
function TakeOffWay({ tws, mode, way }) {
  const off = way.take_off;
  return html`
    <tr>
      <td class="n">${fixed(tws, 0)}</td><td>${t(`web.prepare.best_${mode}`)}</td>
      <td>${onHulls(way.on_hulls)}</td>
      ${off ? html`
        <td class="n">${degrees(off.gather_twa_deg)}</td>
        <td>${t('web.cards.up', { speed: fixed(off.up_boat_speed_kn, 1), seconds: fixed(off.up_after_s, 0),
          camber: fixed(off.camber_deg, 0), twist: fixed(off.twist_deg, 0), sheet: fixed(off.sheet_deg, 0) })}</td>
        <td class="n">${fixed(off.done_after_s, 0)}</td><td class="n">${fixed(off.spent_m, 0)}</td>
        <td class="n">${off.pays_after_s === null ? t('web.cards.never_pays') : fixed(off.pays_after_s, 0)}</td>`
        : html`<td>\u2013</td><td>${t('web.cards.no_path')}</td><td>\u2013</td><td>\u2013</td><td>\u2013</td>`}
      <td>${lull(way.lull)}</td>
    </tr>`;
}

function onHulls(target) {
  if (!target) return '\u2013';
  const place = target.crew_place_m;
  const both = target.both_boards_gain_kn;
  const sails = t('web.cards.on_hulls', {
    twa: fixed(target.twa_deg, 0), speed: fixed(target.boat_speed_kn, 1), heel: fixed(target.heel_deg, 0),
    crew: place === undefined ? '' : t('web.cards.crew', { place: fixed(place, 1) }),
  });
  return both === undefined ? sails : sails + t('web.cards.both_boards', { gain: signed(both, 1) });
}

function lull(one) {
  if (!one) return '\u2013';
  if (!one.on_foils) return t('web.cards.lull_down');
  return `${t('web.cards.lull_stay', { twa: fixed(one.on_foils.twa_deg, 0) })}${
    t(`web.cards.lull_${one.settle}`, { seconds: fixed(one.settle_after_s, 0) })}`;
}

const span = (angles) => (angles.length ? `${degrees(angles[0])} \u2013 ${degrees(angles.at(-1))}` : '\u2013');

function lift(state) {
  if (!state) return '\u2013';
  return t('web.cards.lift', {
    twa: fixed(state.twa_deg, 0), speed: fixed(state.boat_speed_kn, 1), camber: fixed(state.camber_deg, 0),
    twist: fixed(state.twist_deg, 0), sheet: fixed(state.sheet_deg, 0),
  });
}

function gain(way) {
  if (!way.on_foils) return way.on_hulls ? t('web.cards.hulls_only') : '\u2013';
  return way.on_hulls ? t('web.cards.gain', { gain: signed(way.foiling_gains_kn, 1) }) : t('web.cards.foils_only');
}
