// The dock check: what the instruments of a session said at rest against what is known; and the crew's list with its clock.
import { html, useState } from '../dom.js';
import { choose } from '../address.js';
import { getJson, query, send } from '../api.js';
import { t } from '../text.js';
import { useAnswer } from '../hooks.js';
import { Fault } from '../shell.js';
import { List } from './list.js';
import { Result } from './result.js';

/** What people measure by hand, by the name in the address and at the server. */
const GIVEN = ['pull_n', 'antenna_aft_m', 'antenna_starboard_m', 'heel_deg', 'pitch_deg'];
const WORDS = { pull_n: 'pull', antenna_aft_m: 'antenna_aft', antenna_starboard_m: 'antenna_starboard', heel_deg: 'heel', pitch_deg: 'pitch' };

export function Place({ item, choice }) {
  return html`
    <div class="bar"><h1>${t('web.dock.title')}</h1></div>
    ${item ? html`<${Check} key=${item} item=${item} choice=${choice} />` : html`<p class="quiet">${t('web.dock.no_session')}</p>`}
    <${List} open=${!item} withSession=${Boolean(item)} />`;
}

function Check({ item, choice }) {
  const name = encodeURIComponent(item);
  const session = useAnswer((signal) => getJson(`/api/sessions/${name}`, { signal }), [item]);
  const boats = useAnswer((signal) => getJson('/api/boats', { signal }), []);
  const fault = session.fault ?? boats.fault;
  if (fault) return html`<${Fault} fault=${fault} />`;
  if (!session.value || !boats.value) return null;
  const own = (session.value.boats.find((one) => one.boat === choice.own) ?? session.value.boats[0]).boat;
  const boat = boats.value.boats.find((one) => one.id === choice.boat) ?? boats.value.boats[0];
  const wing = boat.wings.find((one) => one.id === choice.wing) ?? boat.wings[0];
  if (!wing) return html`<${Fault} fault=${{ message: boat.faults.join('\n') }} />`;
  const asked = { own, boat: boat.id, wing: wing.id, start_utc: choice.start_utc };
  GIVEN.forEach((one) => {
    asked[one] = choice[one];
  });
  const path = `/api/sessions/${name}/dock${query(asked)}`;
  return html`
    <${Form} session=${session.value} boats=${boats.value.boats} boat=${boat} asked=${asked} />
    <${Answer} key=${path} path=${path} />`;
}

function Form({ session, boats, boat, asked }) {
  const submit = (event) => {
    event.preventDefault();
    const said = new FormData(event.currentTarget);
    choose(Object.fromEntries([...GIVEN, 'start_utc'].map((one) => [one, said.get(one).trim() || null])));
  };
  return html`
    <form class="panel dock-form" onSubmit=${submit}>
      <label class="field">${t('web.dock.own')}
        <select value=${asked.own} onChange=${(e) => choose({ own: e.target.value })}>
          ${session.boats.map((one) => html`<option value=${one.boat}>${one.boat}</option>`)}
        </select></label>
      <label class="field">${t('web.dock.file')}
        <select value=${boat.id} onChange=${(e) => choose({ boat: e.target.value, wing: null })}>
          ${boats.map((one) => html`<option value=${one.id}>${one.title}</option>`)}
        </select></label>
      <label class="field">${t('web.dock.wing')}
        <select value=${asked.wing} onChange=${(e) => choose({ wing: e.target.value })}>
          ${boat.wings.map((one) => html`<option value=${one.id}>${one.id}</option>`)}
        </select></label>
      <label class="field">${t('web.dock.start')}
        <input name="start_utc" size="21" placeholder=${session.start_utc} value=${asked.start_utc ?? ''} /></label>
      <fieldset><legend>${t('web.dock.given')}</legend>
        ${GIVEN.map((one) => html`
          <label class="field">${t(`web.dock.${WORDS[one]}`)}
            <input name=${one} inputmode="decimal" size="6" value=${asked[one] ?? ''} /></label>`)}
      </fieldset>
      <button>${t('web.dock.check')}</button>
    </form>`;
}

function Answer({ path }) {
  const { value, fault } = useAnswer((signal) => getJson(path, { signal }), [path]);
  const [kept, setKept] = useState(null);
  if (fault) return html`<${Fault} fault=${fault} />`;
  if (!value) return null;
  const keep = () => send(path, {}).then((answer) => setKept(answer.kept ? 'kept' : 'not_kept'), () => setKept('not_kept'));
  return html`
    <${Result} check=${value} />
    <p class="bar"><button onClick=${keep}>${t('web.dock.keep')}</button>
      ${kept && html`<span class="quiet" role="status">${t(`web.dock.${kept}`)}</span>`}</p>`;
}
