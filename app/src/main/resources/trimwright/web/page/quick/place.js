// Between two races, on a phone: six lines of one boat, and what her crew says that it will change. Each line opens at its moment.
import { html, useState } from '../dom.js';
import { choose, follow } from '../address.js';
import { getJson, query, send } from '../api.js';
import { t } from '../text.js';
import { useAnswer } from '../hooks.js';
import { Fault, Waiting } from '../shell.js';
import { useWork } from '../prepare/work.js';

/** What a crew can change. */
const CAUSES = ['trim', 'heel_height', 'angle', 'turns_free', 'turns_forced', 'off_foil'];

export function Place({ item, choice }) {
  const name = encodeURIComponent(item ?? 'latest');
  const session = useAnswer((signal) => getJson(`/api/sessions/${name}`, { signal }), [item]);
  const judge = useAnswer((signal) => getJson(`/api/sessions/${name}/judge`, { signal }), [item]);
  const fault = session.fault ?? judge.fault;
  if (fault) return html`<${Fault} fault=${fault} />`;
  if (!session.value || !judge.value) return null;
  const own = (session.value.boats.find((one) => one.boat === choice.of) ?? session.value.boats[0]).boat;
  const against = { boat: choice.boat ?? judge.value.boat, wing: choice.wing ?? judge.value.wing, learned: choice.learned };
  return html`
    <div class="bar">
      <h1>${t('web.quick.title')}</h1>
      <label class="field">${t('web.quick.boat')}
        <select value=${own} onChange=${(e) => choose({ of: e.target.value })}>
          ${session.value.boats.map((one) => html`<option value=${one.boat}>${one.boat}</option>`)}
        </select></label>
    </div>
    <${Six} key=${own} session=${session.value.session} own=${own} against=${against} />`;
}

function Six({ session, own, against }) {
  const [turn, setTurn] = useState(0);
  const path = `/api/sessions/${encodeURIComponent(session)}/quick`;
  const { value, fault } = useWork(`${path}${query({ own, ...against })}`, [turn]);
  if (fault) return html`<${Fault} fault=${fault} />`;
  if (!value) return html`<${Waiting} text=${t('web.quick.making')} />`;
  const momentOf = (line) => `/debrief/${encodeURIComponent(session)}${query({ of: own, ...against, see: 'both', at: line.start_s, lasts: line.duration_s })}`;
  return html`
    <ol class="six">${value.lines.map((line) => html`
      <li><b>${t(`web.quick.${line.subject}`)}</b>
        ${line.start_s === null ? html`<span>${line.sentence}</span>` : html`<a href=${momentOf(line)} onClick=${follow}>${line.sentence}</a>`}</li>`)}
    </ol>
    ${value.said_before && html`<p class="said">${value.said_before}</p>`}
    <${Next} path=${`${path}${query({ own, ...against })}`} value=${value} onSaid=${() => setTurn((old) => old + 1)} />
    <p class="quiet">${value.caution}</p>`;
}

function Next({ path, value, onSaid }) {
  const [text, setText] = useState(value.next ?? '');
  const [cause, setCause] = useState(value.next_cause ?? CAUSES[0]);
  const [fault, setFault] = useState(null);
  const submit = async (event) => {
    event.preventDefault();
    try {
      await send(path, { cause, text });
      setFault(null);
      onSaid();
    } catch (refused) {
      setFault(refused);
    }
  };
  return html`
    <form class="next" onSubmit=${submit}>
      <label class="field">${t('web.quick.next')}
        <input name="text" maxlength="80" value=${text} onInput=${(e) => setText(e.target.value)} /></label>
      <label class="field">${t('web.quick.cause')}
        <select name="cause" value=${cause} onChange=${(e) => setCause(e.target.value)}>
          ${CAUSES.map((one) => html`<option value=${one}>${t(`debrief.cause.${one}`)}</option>`)}
        </select></label>
      <button disabled=${!text.trim()}>${t('web.quick.keep')}</button>
      ${value.next && html`<span class="quiet">${t('web.quick.kept')}</span>`}
      ${fault && html`<${Fault} fault=${fault} />`}
    </form>`;
}
