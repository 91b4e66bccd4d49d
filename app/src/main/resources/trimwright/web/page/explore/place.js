// Explore: the wing as one likes to set it, in a wind of one's own; all that follows from it is seen at once.
import { html, useCallback, useEffect, useMemo, useRef, useState } from '../dom.js';
import { choose, follow } from '../address.js';
import { getJson, query } from '../api.js';
import { t } from '../text.js';
import { useAnswer } from '../hooks.js';
import { Fault, Waiting } from '../shell.js';
import { SectionsNote, sectionPart, useSections } from '../flow.js';
import { APPARENT_WIND, INPUTS, LIES, TRIM, TRUE_WIND, choiceOf, inputOf, namesOf, stateOf, withKeys } from './inputs.js';
import { canUndo } from './history.js';
import { useWing } from './engine.js';
import { useTarget } from './target.js';
import { Changes } from './changes.js';
import { Control } from './controls.js';
import { Figures } from './figures.js';
import { Num } from './number.js';
import { Pressure } from './pressure.js';
import { useSteps } from './steps.js';
import { Sections } from './sections.js';
import { SpanChart } from './span.js';
import { Trace, trimWords, useTrace } from './trace.js';
import { Words } from './words.js';

const MIDDLE_STRIP = 20;

export function Place({ choice }) {
  const [turn, setTurn] = useState(0);
  useEffect(() => {
    // A boat file is changed in an editor: coming back to this window is the moment to look.
    const readAgain = () => setTurn((old) => old + 1);
    window.addEventListener('focus', readAgain);
    return () => window.removeEventListener('focus', readAgain);
  }, []);
  const boats = useAnswer((signal) => getJson('/api/boats', { signal }), [turn]);
  if (boats.fault) return html`<${Fault} fault=${boats.fault} />`;
  if (!boats.value) return null;
  // Boat files with faults are Prepare's to show.
  const whole = boats.value.boats.filter((one) => one.faults.length === 0);
  const asked = boats.value.boats.find((one) => one.id === choice.boat);
  if (asked?.faults.length) return html`<p class="fault" role="alert">${t('web.explore.faulty', { title: asked.title })} <a href=${`/prepare${query({ boat: asked.id })}`} onClick=${follow}>${t('web.place.prepare')}</a></p>`;
  const boat = asked ?? whole[0];
  const wing = boat.wings.find((one) => one.id === choice.wing) ?? boat.wings[0];
  const pick = (id) => choose({ boat: id, wing: null });
  return html`
    <${Ranged} key=${`${boat.id} ${wing.id}`} boats=${whole} boat=${boat} wing=${wing} choice=${choice} pick=${pick} />`;
}

/** With how far each control of this wing goes. */
function Ranged(props) {
  const { boat, wing } = props;
  const range = useAnswer((signal) => getJson(`/api/explore/range${query({ boat: boat.id, wing: wing.id })}`, { signal }), [boat.hash]);
  if (range.fault) return html`<${Fault} fault=${range.fault} />`;
  if (!range.value) return html`<${Waiting} text=${t('web.explore.opening')} />`;
  return html`<${Explore} ...${props} ranges=${range.value.ranges} />`;
}

function Explore({ boats, boat, wing, choice, pick, ranges }) {
  const ask = useRef(null);
  const [steps, { flush, rest, go, show, undo, redo }] = useSteps(() => withinRanges(stateOf(choice), ranges), ask);
  const [strip, setStrip] = useState(MIDDLE_STRIP);
  const [kept, setKept] = useState(null);
  const state = steps.now;
  const sections = useSections(boat, wing);
  const [answer, isNow, early] = useWing(boat, wing, state, strip, sectionPart(sections), flush);
  ask.current = early;
  const [points, clearTrace] = useTrace(answer, steps);
  const turn = useCallback((name, by) => show((now) => ({ ...now, [name]: clamped(name, now[name] + by, ranges) })), [ranges]);
  const targets = useRef(new Set());
  const { target, work, said, seek } = useTarget(boat, wing, state, (inputs) => {
    const there = withKeys(state, inputs);
    targets.current.add(there);
    go(there);
  });

  // The address follows when the hand is at rest, so that it can be kept and shared.
  useEffect(() => choose({ boat: boat.id, wing: wing.id, ...choiceOf(steps.base) }), [steps.base]);
  useEffect(() => {
    const onKey = (event) => {
      if (!(event.ctrlKey || event.metaKey) || event.target.type === 'text') return;
      const key = event.key.toLowerCase();
      if (key !== 'z' && key !== 'y') return;
      event.preventDefault();
      (key === 'y' || event.shiftKey ? redo : undo)();
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, []);

  const takeWind = (apparent) => {
    if (apparent === state.apparent) return;
    const felt = apparent && answer.wing ? { aws: answer.wing.aws_kn, awa: answer.wing.awa_deg } : {};
    go({ ...state, ...felt, apparent });
  };
  const control = (name) => html`
    <${Control} key=${name} name=${name} value=${state[name]} range=${ranges[inputOf(name).key]} mark=${target?.[inputOf(name).key]}
      onMove=${(make) => show((now) => ({ ...now, [name]: make(now[name]) }))} onRest=${rest} />`;
  // Drawn again for a new answer only, not for each move of a slider before it.
  const pictures = useMemo(() => html`
    <section class="panel explore-head" aria-labelledby="answer-title">
      <h2 id="answer-title" class="hidden-text">${t('web.explore.answer')}</h2>
      <${Words} answer=${answer} />
      <${Figures} wing=${answer.wing} kept=${kept?.wing} />
    </section>
    <section class="panel explore-sections" aria-labelledby="sections-title">
      <h2 id="sections-title" class="hidden-text">${t('web.explore.sections')}</h2>
      <${Sections} answer=${answer} kept=${kept} onTurn=${turn} onRest=${rest} />
      <p class="quiet sections-note">${t('web.explore.sections_note')}${answer.wing?.awa_deg < 0 && ` ${t('web.explore.from_port')}`}</p>
    </section>
    <${SpanChart} answer=${answer} kept=${kept?.wing} strip=${strip} onStrip=${setStrip} />
    <${Changes} wing=${answer.wing} />`, [answer, kept, strip, turn]);
  const trace = useMemo(() => html`<${Trace} points=${points} targets=${targets.current} onGo=${go} onClear=${clearTrace} />`, [points]);
  const isMoving = steps.base !== steps.now;
  const pressure = useMemo(() => html`<${Pressure} boat=${boat} wing=${wing} state=${steps.base} strip=${strip} isMoving=${isMoving} />`, [boat, wing, steps.base, strip, isMoving]);
  return html`
    <div class="bar">
      <h1>${t('web.explore.title')}</h1>
      <label class="field">${t('web.prepare.boat')}
        <select value=${boat.id} onChange=${(e) => pick(e.target.value)}>${boats.map((one) => html`<option value=${one.id}>${one.file ? `${one.title} (${one.id})` : one.title}</option>`)}</select></label>
      <label class="field">${t('web.prepare.wing')}
        <select value=${wing.id} onChange=${(e) => choose({ wing: e.target.value })}>${boat.wings.map((one) => html`<option value=${one.id}>${t('web.prepare.wing_name', { id: one.id, span: one.span_m.toFixed(1) })}</option>`)}</select></label>
      <span class="grow"></span>
      <button class="go-target" onClick=${seek} disabled=${state.apparent || work} title=${state.apparent ? t('web.explore.target_needs') : null}>
        ${work ? t('web.explore.target_work', { done: work.done, total: work.total }) : t('web.explore.target')}</button>
      ${kept
        ? html`<button class="kept" onClick=${() => setKept(null)} title=${trimWords(kept.state)}>${t('web.explore.drop')}</button>`
        : html`<button class="keep" disabled=${!answer.wing} onClick=${() => setKept(answer)} title=${t('web.explore.keep_what')}>${t('web.explore.keep')}</button>`}
      <button onClick=${undo} disabled=${!canUndo(steps)} title="Ctrl+Z">${t('web.explore.undo')}</button>
      <button onClick=${redo} disabled=${!steps.future.length} title="Ctrl+Y">${t('web.explore.redo')}</button>
    </div>
    ${answer.fault && html`<${Fault} fault=${answer.fault} />`}
    <${SectionsNote} said=${sections} made=${answer.wing?.section} />
    ${said.map((one) => html`<p class="quiet target-said" role="status">${one}</p>`)}
    <div class="explore-grid" data-shown=${isNow ? 'now' : 'before'} data-answers=${answer.count}>
      <section class="panel explore-controls" aria-label=${t('web.explore.controls')}>
        <div class="group-head"><h2>${t('web.explore.wind')}</h2>
          <span class="views" role="group" aria-label=${t('web.explore.wind')}>
            <button class="small" aria-pressed=${state.apparent ? 'false' : 'true'} onClick=${() => takeWind(false)}>${t('web.explore.true_wind')}</button>
            <button class="small" aria-pressed=${state.apparent ? 'true' : 'false'} onClick=${() => takeWind(true)}>${t('web.explore.apparent_wind')}</button></span></div>
        ${(state.apparent ? APPARENT_WIND : TRUE_WIND).map(control)}
        <${Felt} wing=${answer.wing} apparent=${state.apparent} />
        <div class="group-head"><h2>${t('web.explore.trim')}</h2></div>
        ${TRIM.map(control)}
        <details class="lies"><summary>${t('web.prepare.lies')}</summary>${LIES.filter((name) => namesOf(state).includes(name)).map(control)}</details>
        <p class="keys"><span><kbd>\u2190</kbd> <kbd>\u2192</kbd> ${t('web.explore.key_step')}</span><span><kbd>Shift</kbd> ${t('web.explore.key_fine')}</span>
          <span><kbd>Ctrl+Z</kbd> ${t('web.explore.key_undo')}</span><span>${t('web.explore.key_wheel')}</span></p>
        <${Newcomer} />
      </section>
      ${pictures}
      ${trace}
      ${pressure}
    </div>`;
}

function Felt({ wing, apparent }) {
  if (apparent || !wing) return null;
  return html`<p class="felt">${t('web.explore.felt')} <${Num} wing=${wing} path="aws_kn" /> ${t('web.unit.aws')}, <${Num} wing=${wing} path="awa_deg" />\u00b0</p>`;
}

function Newcomer() {
  return html`
    <details class="newcomer" open=${window.innerWidth > 1180}><summary><b>${t('web.explore.new')}</b></summary>
      <p>${t('web.explore.new_what')}</p>
      <ol>${[1, 2, 3, 4, 5].map((n) => html`<li>${t(`web.explore.try.${n}`)}</li>`)}</ol>
      <p class="quiet">${t('web.explore.new_limits')}</p>
    </details>`;
}

/** An address may come from another wing, or from a hand. */
function withinRanges(state, ranges) {
  const within = { ...state };
  for (const { name } of INPUTS) within[name] = clamped(name, state[name], ranges);
  return within;
}

function clamped(name, value, ranges) {
  const [low, high] = ranges[inputOf(name).key];
  return Math.max(low, Math.min(high, value));
}
