// Library: the sessions that are kept, newest first.
import { html } from '../dom.js';
import { follow } from '../address.js';
import { getJson } from '../api.js';
import { day, offsetName, secondsOf, timeOfDay } from '../clock.js';
import { duration } from '../format.js';
import { t } from '../text.js';
import { useAnswer } from '../hooks.js';
import { Fault } from '../shell.js';

export function Place() {
  const answer = useAnswer((signal) => getJson('/api/sessions', { signal }), []);
  if (answer.fault) return html`<${Fault} fault=${answer.fault} />`;
  if (!answer.value) return null;
  const sessions = [...answer.value.sessions].reverse();
  return html`
    <div class="bar"><h1>${t('web.library.title')}</h1> <a href="/dock" onClick=${follow}>${t('web.library.dock_list')}</a>
      <span class="quiet">${t(sessions.length === 1 ? 'web.library.one' : 'web.library.count', { count: sessions.length })}</span></div>
    ${sessions.length ? html`<${Sessions} sessions=${sessions} />` : html`
      <section class="panel empty"><h2>${t('web.library.empty')}</h2>
        <p>${t('web.library.how')}</p><pre>${t('web.library.example')}</pre></section>`}`;
}

function Sessions({ sessions }) {
  return html`
    <section class="panel scroller">
      <table class="sessions">
        <thead><tr><th>${t('web.library.day')}</th><th>${t('web.library.session')}</th><th>${t('web.library.boats')}</th>
          <th class="n">${t('web.library.length')}</th><th class="n">${t('web.library.channels')}</th>
          <th>${t('web.library.files')}</th><th>${t('web.library.findings')}</th></tr></thead>
        <tbody>${sessions.map((one) => html`<${Session} key=${one.session} session=${one} />`)}</tbody>
      </table>
    </section>`;
}

function Session({ session }) {
  const start = secondsOf(session.start_utc);
  const offset = session.utc_offset_s;
  const lines = session.sources.reduce((sum, source) => sum + source.lines, 0);
  const findings = session.sources.flatMap((source) => Object.values(source.issues)).reduce((a, b) => a + b, 0);
  return html`
    <tr>
      <td>${day(start, offset)}<br />${timeOfDay(start, offset)} <span class="quiet" title=${t(`web.clock.from.${session.utc_offset_from}`)}>${offsetName(offset)}</span>
        ${offset !== 0 && html`<br /><span class="quiet">${timeOfDay(start)} ${t('web.clock.utc')}</span>`}</td>
      <td><a href=${`/debrief/${encodeURIComponent(session.session)}`} onClick=${follow}>${session.session}</a><br />
        <a class="quiet" href=${`/dock/${encodeURIComponent(session.session)}`} onClick=${follow}>${t('web.place.dock')}</a></td>
      <td class="wrap">${session.boats.map((boat) => boat.boat).join(', ')}</td>
      <td class="n">${duration(session.duration_s)}</td>
      <td class="n">${session.boats.reduce((sum, boat) => sum + boat.channels.length, 0)}</td>
      <td class="wrap">${session.sources.map((source) => source.name).join(', ')}</td>
      <td class="wrap"><${Findings} session=${session} findings=${findings} lines=${lines} /></td>
    </tr>`;
}

/** How much of what came in could not be used as it stood, by reason. */
function Findings({ session, findings, lines }) {
  if (!findings) return html`<span class="quiet">${t('web.library.none', { lines: lines.toLocaleString('en-GB') })}</span>`;
  return html`
    <details><summary>${t('web.library.some', { findings: findings.toLocaleString('en-GB'), lines: lines.toLocaleString('en-GB') })}</summary>
      <ul class="plainlist">${session.sources.flatMap((source) => Object.entries(source.issues).map(([reason, count]) =>
        html`<li>${reason.replaceAll('_', ' ')}: ${count.toLocaleString('en-GB')}</li>`))}
      ${session.sources.flatMap((source) => source.notes).map((note) => html`<li class="quiet">${note}</li>`)}</ul>
    </details>`;
}
