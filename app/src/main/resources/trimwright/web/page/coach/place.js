// Coach: all boats at once, on this machine only.
import { html, useEffect, useState } from '../dom.js';
import { useStore } from '../store.js';
import { fixed, percent } from '../format.js';
import { t } from '../text.js';
import { createStream, valuesOf } from '../live/stream.js';
import { faultTexts } from '../live/faults.js';
import { markKey, useMark } from '../live/mark.js';
import { RaceOver } from './raceover.js';

const degrees = (name, decimals) => ({ name, show: (values) => fixed(values[name], decimals) });
const reachableBetween = (values) =>
  Number.isFinite(values.reachable_kn)
    ? t('web.coach.reachable_between', { low: fixed(values.reachable_low_kn, 1), high: fixed(values.reachable_high_kn, 1), target: fixed(values.target_kn, 1) })
    : undefined;
const COLUMNS = [
  { name: 'speed_kn', show: (values) => fixed(values.speed_kn, 1) },
  { name: 'reachable_kn', show: (values) => fixed(values.reachable_kn, 1), more: reachableBetween },
  { name: 'share_ratio', show: (values) => percent(values.share_ratio, 0) },
  { name: 'vmg_kn', show: (values) => fixed(values.vmg_kn, 1) },
  { name: 'tws_kn', show: (values) => fixed(values.tws_kn, 1) },
  degrees('twd_deg', 0),
  degrees('twa_deg', 0),
  degrees('heel_deg', 1),
  { name: 'ride_height_m', show: (values) => fixed(values.ride_height_m, 2) },
  degrees('camber_deg', 1),
  degrees('twist_deg', 1),
  degrees('sheet_deg', 1),
];

export function Place() {
  const [stream] = useState(createStream);
  useEffect(() => () => stream.close(), [stream]);
  const { state, time, heard } = useStore(stream);
  const [order, setOrder] = useState({ name: 'boat', down: false });
  const mark = useMark();
  if (!state || !heard) return html`<p class="waiting coachwait" role="status">${t('web.live.no_link')}</p>`;
  const boats = sorted(state.boats.map((boat) => ({ boat, values: valuesOf(state, boat) })), order);
  const sort = (name) => setOrder({ name, down: order.name === name ? !order.down : name !== 'boat' });
  return html`
    <div class="coach">
      <div class="bar"><h1>${t('web.place.coach')}</h1>
        <b class="event">${t(`web.live.event.${state.event}`)}</b>
        <span>${time.slice(11, 19)} UTC</span>
        ${state.replay_rate_ratio > 0 ? html`<b>${t('web.live.replay', { rate: state.replay_rate_ratio })}</b>`
          : html`<span>${state.disk_fault ? t('web.live.disk', { fault: state.disk_fault, bytes: state.lost_bytes }) : t('web.live.kept', { size: fixed(state.recorded_mb, 1) })}</span>`}
        <span class="grow"></span>
        ${state.replay_rate_ratio > 0 || html`<${RaceOver} own=${state.own} />`}
        <span class="quiet">${t('web.live.key.is', { key: markKey() })}</span>
        <b role="status">${mark.result && t(`web.live.mark.${mark.result}`)}</b></div>
      ${state['call.silence'] && html`<p><b>${t('web.coach.call')}:</b> ${state['call.text'] ? `${state['call.text']} (${state['call.time_utc'].slice(11, 19)} UTC)` : t('web.coach.call.none')} <span class="quiet">${t(`web.coach.silence.${state['call.silence']}`)}</span></p>`}
      ${state.event === 'racing' && html`<p class="quiet">${t('web.live.racing_hides')}</p>`}
      <section class="panel scroller">
        <table>
          <thead><tr>
            <${Head} name="boat" order=${order} sort=${sort} /><th>${t('web.coach.state')}</th>
            ${COLUMNS.map((column) => html`<${Head} key=${column.name} name=${column.name} order=${order} sort=${sort} number />`)}
            <th>${t('web.coach.faults')}</th></tr></thead>
          <tbody>${boats.map(({ boat, values }) => html`
            <tr key=${boat} class=${boat === state.own ? 'chosen' : ''}>
              <td><b>${boat}</b></td><td>${t(`web.coach.state.${values.state}`)}</td>
              ${COLUMNS.map((column) => html`<td class="n" key=${column.name} title=${column.more?.(values)}>${column.show(values)}</td>`)}
              <td class="wrap">${faultTexts(values).join(', ')}</td>
            </tr>`)}</tbody>
        </table>
      </section>
      ${state.inputs?.length > 0 && html`<section class="panel inputs"><h2>${t('web.coach.inputs')}</h2>
        <ul class="plainlist">${state.inputs.map((input) => html`<li key=${input}>${input}</li>`)}</ul></section>`}
    </div>`;
}

function Head({ name, order, sort, number }) {
  const here = order.name === name;
  return html`<th class=${number ? 'n' : ''} aria-sort=${here ? (order.down ? 'descending' : 'ascending') : 'none'}>
    <button class="plain" onClick=${() => sort(name)}>${t(`web.coach.${name}`)}${here ? (order.down ? ' \u2193' : ' \u2191') : ''}</button></th>`;
}

function sorted(boats, { name, down }) {
  const key = ({ boat, values }) => (name === 'boat' ? boat : values[name]);
  const absent = (value) => value === null || value === undefined;
  return [...boats].sort((a, b) => {
    const [x, y] = [key(a), key(b)];
    // What is not known stands last, whichever way.
    if (absent(x) || absent(y)) return absent(x) - absent(y);
    const way = typeof x === 'string' ? x.localeCompare(y, 'en') : x - y;
    return down ? -way : way;
  });
}
