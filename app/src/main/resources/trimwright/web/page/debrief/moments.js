// What people marked in a session: a list, and a line to mark the stretch that is shown.
import { html, useState } from '../dom.js';
import { getJson, query, remove, send } from '../api.js';
import { useAnswer } from '../hooks.js';
import { t } from '../text.js';
import { useStore } from '../store.js';
import { Fault } from '../shell.js';
import { Film } from './film.js';

export function Moments({ report, against, boat, view }) {
  const path = `/api/sessions/${encodeURIComponent(report.session)}/moments`;
  const known = useAnswer((signal) => getJson(path, { signal }), [path]);
  const [changed, setChanged] = useState(null);
  const [fault, setFault] = useState(null);
  const [at, setAt] = useState(null);
  const list = changed ?? known.value;
  const ask = async (asked) => {
    try {
      setChanged(await asked());
      setFault(null);
      return true;
    } catch (refused) {
      setFault(refused);
      return false;
    }
  };
  if (known.fault) return html`<${Fault} fault=${known.fault} />`;
  if (!list) return null;
  return html`
    <${Mark} boat=${boat.boat} view=${view} onMark=${(moment) => ask(() => send(path, moment))} />
    ${fault && html`<${Fault} fault=${fault} />`}
    ${list.moments.length === 0 ? html`<p class="quiet">${t('web.moment.none')}</p>` : html`
    <table>
      <thead><tr><th>${t('web.debrief.at')}</th><th>${t('web.moment.note')}</th><th></th></tr></thead>
      <tbody>${list.moments.map((one) => html`<${Row} key=${one.id} moment=${one} view=${view} onShow=${setAt} page=${`${path}/${one.id}/page${query(against)}`} onDrop=${() => ask(() => remove(`${path}/${one.id}`))} />`)}</tbody>
    </table>`}
    <${Film} session=${report.session} view=${view} at=${at} />`;
}

function Row({ moment, view, page, onShow, onDrop }) {
  const from = view.whole.from + moment.start_s;
  const show = () => {
    view.show(from, from + moment.duration_s);
    onShow(from);
  };
  return html`
    <tr class="pick" tabindex="0" onClick=${show} onKeyDown=${(e) => e.key === 'Enter' && e.target === e.currentTarget && show()}>
      <td>${view.clock.timeOfDay(from)}<br /><span class="quiet">${t('web.moment.seconds', { seconds: Math.round(moment.duration_s) })}</span></td>
      <td class="wrap">${moment.note}<br /><span class="quiet">${[moment.boat ?? t('web.moment.all'), ...moment.tags].join(', ')}</span></td>
      <td class="n" onClick=${(e) => e.stopPropagation()}><a href=${page} target="_blank" rel="noopener">${t('web.moment.page')}</a>
        <button class="plain" onClick=${onDrop} aria-label=${t('web.moment.drop_named', { note: moment.note })}>${t('web.moment.drop')}</button></td>
    </tr>`;
}

/** The longest moment that the library keeps (s). */
const LONGEST = 3600;

/** Marks what the charts show. */
function Mark({ boat, view, onMark }) {
  const { from, to } = useStore(view);
  const [note, setNote] = useState('');
  const [tags, setTags] = useState('');
  const [all, setAll] = useState(false);
  const submit = async (event) => {
    event.preventDefault();
    const kept = await onMark({ start_s: from - view.whole.from, duration_s: to - from, boat: all ? null : boat, note, tags: tags.split(',') });
    if (kept) setNote('');
  };
  return html`
    <form class="moment" onSubmit=${submit}>
      <p class="quiet">${t(to - from > LONGEST ? 'web.moment.too_long' : 'web.moment.shown', { from: view.clock.timeOfDay(from), to: view.clock.timeOfDay(to) })}</p>
      <label class="field">${t('web.moment.note')} <input name="note" maxlength="200" value=${note} onInput=${(e) => setNote(e.target.value)} /></label>
      <label class="field">${t('web.moment.tags')} <input name="tags" value=${tags} onInput=${(e) => setTags(e.target.value)} /></label>
      <label class="field"><input type="checkbox" name="all" checked=${all} onChange=${(e) => setAll(e.target.checked)} /> ${t('web.moment.all')}</label>
      <button disabled=${!note.trim() || to - from > LONGEST}>${t('web.moment.mark')}</button>
    </form>`;
}
