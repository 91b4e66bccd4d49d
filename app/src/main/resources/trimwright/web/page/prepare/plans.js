// Plans of the chosen wind: a start on a course, and what to do in a turn by which cue. Both take a while and are made when asked.
import { html, useState } from '../dom.js';
import { query } from '../api.js';
import { fixed, percent } from '../format.js';
import { t } from '../text.js';
import { Fault, Waiting } from '../shell.js';
import { useWork } from './work.js';

const KINDS = ['gybe', 'tack', 'bear-away', 'round-up'];
const BEGINS = ['foils', 'hulls', 'let-down'];

export function Plans({ boat, wing, tws, turbulence }) {
  const at = { boat: boat.id, wing: wing.id, turbulence_percent: tidy(turbulence) };
  return html`
    <section class="panel cards" aria-labelledby="plans-title">
      <h2 id="plans-title">${t('web.plans.title')}</h2>
      <p class="quiet">${t('web.plans.lead', { turbulence: tidy(turbulence) })}</p>
      <${Ask} name="start" made=${boat.hash} pathOf=${(fields) => `/api/start-plan${query({ ...at, ...fields })}`} show=${(doc) => html`<${Start} doc=${doc} />`}
        first=${{ tws_kn: tws ? String(tws) : '14', twa_deg: '100' }}
        inputs=${(fields, set) => html`<${Field} name="tws_kn" fields=${fields} set=${set} /><${Field} name="twa_deg" fields=${fields} set=${set} />`} />
      <${Ask} name="turn" made=${boat.hash} pathOf=${(fields) => `/api/turn-plan${query({ ...at, ...fields })}`} show=${(doc) => html`<${Turn} doc=${doc} />`}
        first=${{ tws_kn: tws ? String(tws) : '14', kind: 'gybe', begin: 'foils' }}
        inputs=${(fields, set) => html`<${Field} name="tws_kn" fields=${fields} set=${set} />
          <label class="field">${t('web.plans.kind')}
            <select name="kind" value=${fields.kind} onChange=${(e) => set({ ...fields, kind: e.target.value })}>
              ${KINDS.map((kind) => html`<option value=${kind}>${t(`web.plans.${kind}`)}</option>`)}
            </select></label>
          <label class="field">${t('web.plans.begin')}
            <select name="begin" value=${fields.begin} onChange=${(e) => set({ ...fields, begin: e.target.value })}>
              ${BEGINS.map((begin) => html`<option value=${begin}>${t(`web.plans.begin_${begin}`)}</option>`)}
            </select></label>`} />
    </section>`;
}

function Field({ name, fields, set }) {
  return html`
    <label class="field">${t(`web.plans.${name}`)}
      <input name=${name} size="6" value=${fields[name]} onInput=${(e) => set({ ...fields, [name]: e.target.value })} />
    </label>`;
}

/** A question whose answer takes work: asked by a button, shown with how far it has come. */
function Ask({ name, made, first, inputs, pathOf, show }) {
  const [fields, setFields] = useState(first);
  const [path, setPath] = useState(null);
  const { value, fault, work } = useWork(path, [made]);
  const submit = (event) => {
    event.preventDefault();
    setPath(pathOf(fields));
  };
  return html`
    <details class="card" id=${`plan-${name}`}>
      <summary>${t(`web.plans.${name}`)}</summary>
      <form class="fields" onSubmit=${submit}>${inputs(fields, setFields)}<button>${t('web.plans.go')}</button></form>
      ${fault ? html`<${Fault} fault=${fault} />` : value
        ? html`<div class="scroller">${show(value)}</div><p class="quiet">${value.caution}</p>`
        : path && (work
          ? html`<p class="waiting" role="status"><progress value=${work.done} max=${work.total} aria-label=${t('web.plans.working')} /> ${t('web.plans.working')}</p>`
          : html`<${Waiting} text=${t('web.plans.working')} />`)}
    </details>`;
}

/** Without the last digits of a share turned into per cent. */
const tidy = (percents) => Number(percents.toFixed(3));

const known = (value) => value !== null && value !== undefined;

const share = (ratio) => (known(ratio) ? percent(ratio) : '\u2013');

/** Median with what a tenth and nine tenths of the boats stay under. */
function span(of, name, unit) {
  const [middle, low, high] = [of[`${name}_${unit}`], of[`${name}_low_${unit}`], of[`${name}_high_${unit}`]];
  if (!known(middle)) return '\u2013';
  return t('web.plans.span', { middle: fixed(middle, 0), low: fixed(low, 0), high: known(high) ? fixed(high, 0) : '\u2026' });
}

function from(held) {
  const where = held.hull_touched_ratio >= 0.5 ? 'off' : held.hull_touched_ratio <= 0.05 ? 'on' : 'touching';
  return t(`web.plans.from_${where}`, { speed: fixed(held.boat_speed_kn, 0) });
}

function Head({ names }) {
  return html`<thead><tr>${names.map((name) => html`<th scope="col">${t(`web.plans.head.${name}`)}</th>`)}</tr></thead>`;
}

function Start({ doc }) {
  const on = doc.slowest_on_foils;
  const off = doc.slowest_off_foils;
  return html`
    <p>${t('web.plans.start_target', { target: fixed(doc.target_kn, 1), boats: doc.boats })}
      ${' '}${on ? t('web.plans.held_on', { speed: fixed(on.boat_speed_kn, 0), least: fixed(on.boat_speed_min_kn, 0) }) : t('web.plans.held_on_none')}
      ${' '}${off ? t('web.plans.held_off', { speed: fixed(off.boat_speed_kn, 0) }) : t('web.plans.held_off_none')}</p>
    <p>${t('web.plans.seconds')}</p>
    <table>
      <thead><tr><th scope="col">${t('web.plans.head.distance')}</th>${doc.gathering.map((one) => html`<th scope="col">${from(one.from)}</th>`)}</tr></thead>
      <tbody>${(doc.gathering[0]?.reached ?? []).map((row, i) => html`
        <tr><td class="n">${row.distance_m}</td>${doc.gathering.map((one) => html`<td class="n">${span(one.reached[i], 'time', 's')}</td>`)}</tr>`)}</tbody>
    </table>
    <p>${t('web.plans.spare')}</p>
    <p>${t('web.plans.last')}</p>
    <table><${Head} names=${['from', 'full_s', 'full_m', 'touched', 'capsized']} /><tbody>${doc.gathering.map((one) => html`<${Full} one=${one} />`)}</tbody></table>
    <p>${t('web.plans.other')}</p>
    <table><${Head} names=${['from', 'full_s', 'full_m', 'touched', 'capsized']} /><tbody>${doc.other_tack.map((one) => html`<${Full} one=${one} />`)}</tbody></table>
    <p>${t('web.plans.lose')}</p>
    <table>
      <${Head} names=${['how', 'wanted', 'hold', 'regained', 'least', 'touched', 'capsized']} />
      <tbody>${doc.losing.map((way) => html`
        <tr><td>${t(`web.plans.delay_${way.delay}`)}</td><td class="n">${fixed(way.wanted_s, 0)}</td><td class="n">${way.hold_s < 0.5 ? '<0.5' : fixed(way.hold_s, 1)}</td>
          <td class="n">${known(way.regained_s) ? fixed(way.regained_s, 0) : '\u2013'}</td><td class="n">${fixed(way.boat_speed_min_kn, 0)}</td>
          <td class="n">${share(way.hull_touched_ratio)}</td><td class="n">${share(way.capsized_ratio)}</td></tr>`)}</tbody>
    </table>`;
}

function Full({ one }) {
  return html`
    <tr><td>${from(one.from)}</td><td class="n">${span(one, 'full_speed', 's')}</td><td class="n">${span(one, 'full_speed', 'm')}</td>
      <td class="n">${share(one.hull_touched_ratio)}</td>
      <td class="n">${one.capsized_ratio > 0.02 ? html`<b>${t('web.plans.not_so', { share: share(one.capsized_ratio) })}</b>` : share(one.capsized_ratio)}</td></tr>`;
}

function Turn({ doc }) {
  const safe = doc.safe.kept ? 'safe' : 'not_safe';
  return html`
    ${doc.touching === 'planned' && doc.begin === 'foils' ? html`<p>${t('web.plans.touched_down')}</p>` : ''}
    ${['full', 'safe'].map((name) => html`
      <p><b>${name === 'safe' ? doc.safe_said : t('web.plans.turn_full')}</b></p>
      <table><${Head} names=${['after', 'cue', 'move']} />
        <tbody>${doc[name].cues.map((step) => html`<tr><td class="n">${known(step.after_s) ? fixed(step.after_s, 1) : '\u2013'}</td><td>${step.cue}</td><td>${step.move}</td></tr>`)}</tbody></table>
      <p>${doc[name].sheet_said}</p>
      <p>${doc[name].abort.said}</p>`)}
    <p>${t('web.plans.sailed', { turns: doc.naive.turns })}</p>
    <table><${Head} names=${['plan', 'lost', 'least', 'spoilt', 'limit', 'touched', 'heel', 'capsized']} />
      <tbody>${[['straight', doc.straight], ['naive', doc.naive], ['full', doc.full.sailed], [safe, doc.safe.sailed]].map(([name, one]) => html`
        <tr><td>${t(`web.plans.row_${name}`)}</td><td class="n">${fixed(one.lost_m, 0)}</td><td class="n">${fixed(one.boat_speed_min_kn, 0)}</td>
          <td class="n">${share(one.spoilt_ratio)}</td><td class="n">${share(one.limit_ratio)}</td><td class="n">${share(one.hull_touched_ratio)}</td><td class="n">${share(one.windward_heel_ratio)}</td>
          <td class="n">${share(one.capsized_ratio)}</td></tr>`)}</tbody></table>`;
}
