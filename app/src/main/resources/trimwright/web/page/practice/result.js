// What a drill cost, beside the computed hand in the same wind and beside one's own runs before.
import { html } from '../dom.js';
import { getJson, query } from '../api.js';
import { fixed } from '../format.js';
import { t } from '../text.js';
import { useAnswer } from '../hooks.js';
import { alike } from './runs.js';

export function Result({ result, onAgain }) {
  const { found, setup, mine } = result;
  const yardstick = useAnswer((signal) => getJson(`/api/practice/yardstick${query(setup)}`, { signal }), [found]);
  const other = yardstick.value;
  const over = Object.entries(found.over_limit_s).filter(([, seconds]) => seconds > 0);
  return html`
    <section class="panel drill-result" role="status">
      <h2>${t(found.end === 'sailed' ? 'web.practice.result' : `web.practice.${found.end}`)}</h2>
      <p class="lost"><b>${fixed(found.lost_s, 1)}</b> ${t(found.end !== 'sailed' ? 'web.practice.lost_capsized' : 'web.practice.lost_of', { seconds: fixed(found.seconds_s, 0) })}</p>
      ${other && html`<p>${t('web.practice.yardstick', { lost: fixed(other.lost_s, 1) })}</p>`}
      ${found.turns.length > 0 && html`
        <table><thead><tr><th>${t('web.practice.turn')}</th><th class="n">${t('web.practice.turn_lost')}</th><th class="n">${t('web.practice.turn_least')}</th><th>${t('web.practice.turn_hull')}</th></tr></thead>
          <tbody>${found.turns.map((turn, i) => html`<tr><td>${i + 1}</td><td class="n">${fixed(turn.lost_m, 0)}${other?.turns[i] && html` <span class="unit">(${fixed(other.turns[i].lost_m, 0)})</span>`}</td>
            <td class="n">${fixed(turn.boat_speed_min_kn, 1)}</td><td>${t(turn.hull_touched ? 'web.practice.wet' : 'web.practice.dry')}</td></tr>`)}</tbody></table>`}
      <p>${over.length ? t('web.practice.over', { list: over.map(([limit, seconds]) => `${t(`web.practice.limit.${limit}`)} ${fixed(seconds, 1)} s`).join(', ') }) : t('web.practice.within')}</p>
      <p class="quiet">${t('web.practice.means', { speed: fixed(found.mean_boat_speed_kn, 1), heel: fixed(found.leeward_heel_max_deg, 1), touched: fixed(found.hull_touched_s, 1) })}</p>
      ${found.slid_s > 0 && html`<p>${t('web.practice.slid', { seconds: fixed(found.slid_s, 1) })}</p>`}
      <${Before} runs=${alike(setup, mine)} />
      <button class="start" onClick=${onAgain}>${t('web.practice.again')}</button>
    </section>`;
}

/** Seconds lost in each run so far, the newest last. */
function Before({ runs }) {
  if (runs.length < 2) return null;
  const shown = runs.slice(-24);
  const most = Math.max(...shown.map((one) => one.lost), 1);
  return html`
    <figure class="runs"><svg viewBox=${`0 0 ${shown.length * 8} 40`} preserveAspectRatio="none" role="img" aria-label=${t('web.practice.runs_label')}>
      ${shown.map((one, i) => html`<rect x=${i * 8 + 1} width="6" y=${40 - 38 * Math.max(0, one.lost) / most} height=${Math.max(0.5, 38 * Math.max(0, one.lost) / most)} class=${one.end !== 'sailed' ? 'capsized' : i === shown.length - 1 ? 'now' : ''} />`)}</svg>
      <figcaption class="quiet">${t('web.practice.runs', { count: runs.length, best: fixed(Math.min(...runs.map((one) => one.lost)), 1) })}</figcaption></figure>`;
}
