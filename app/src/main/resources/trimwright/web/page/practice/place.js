// Practice: a boat to sail. What to sail on top, the boat in the middle, what it cost below.
import { html, useEffect, useRef, useState } from '../dom.js';
import { choose } from '../address.js';
import { getJson, getWork, query } from '../api.js';
import { t } from '../text.js';
import { useAnswer } from '../hooks.js';
import { Fault, Waiting } from '../shell.js';
import { createHands } from './hands.js';
import { Bindings } from './bindings.js';
import { Result } from './result.js';
import { Stage } from './stage.js';
import { createSail } from './sail.js';
import { remember } from './runs.js';

/** The newcomer's path: one hand at a time. */
const FIRST_HAND = 'sheet';

export function Place({ choice }) {
  const boats = useAnswer((signal) => getJson('/api/boats', { signal }), []);
  if (boats.fault) return html`<${Fault} fault=${boats.fault} />`;
  if (!boats.value) return null;
  const whole = boats.value.boats.filter((one) => one.faults.length === 0);
  const boat = whole.find((one) => one.id === choice.boat) ?? whole[0];
  const wing = boat.wings.find((one) => one.id === choice.wing) ?? boat.wings[0];
  return html`
    <div class="bar">
      <h1>${t('web.practice.title')}</h1>
      <label class="field">${t('web.prepare.boat')}
        <select value=${boat.id} onChange=${(e) => choose({ boat: e.target.value, wing: null })}>
          ${whole.map((one) => html`<option value=${one.id}>${one.title}</option>`)}</select></label>
      <label class="field">${t('web.prepare.wing')}
        <select value=${wing.id} onChange=${(e) => choose({ wing: e.target.value })}>
          ${boat.wings.map((one) => html`<option value=${one.id}>${t('web.prepare.wing_name', { id: one.id, span: one.span_m.toFixed(1) })}</option>`)}</select></label>
    </div>
    <${Offer} key=${`${boat.hash} ${wing.id}`} boat=${boat} wing=${wing} choice=${choice} />`;
}

/** Asks again until the targets are computed. */
function useOffer(boat, wing) {
  const [state, setState] = useState({ offer: null, work: null, fault: null });
  useEffect(() => {
    let stopped = false;
    const ask = async () => {
      try {
        const { ready, body } = await getWork(`/api/practice${query({ boat: boat.id, wing: wing.id })}`);
        if (stopped) return;
        setState(ready ? { offer: body, work: null, fault: null } : { offer: null, work: body, fault: null });
        if (!ready) setTimeout(ask, 400);
      } catch (fault) {
        if (!stopped) setState({ offer: null, work: null, fault });
      }
    };
    ask();
    return () => {
      stopped = true;
    };
  }, [boat.id, wing.id]);
  return state;
}

function Offer({ boat, wing, choice }) {
  const { offer, work, fault } = useOffer(boat, wing);
  if (fault) return html`<${Fault} fault=${fault} />`;
  if (!offer) {
    return html`<${Waiting} text=${t('web.practice.waiting')} />
      ${work && html`<progress value=${work.done} max=${work.total} aria-label=${t('web.practice.waiting')} />`}`;
  }
  return html`<${Drills} boat=${boat} wing=${wing} offer=${offer} choice=${choice} />`;
}

function Drills({ boat, wing, offer, choice }) {
  const drill = offer.drills.find((one) => one.drill === choice.drill) ?? offer.drills[0];
  const wind = Number(choice.tws ?? 14);
  const waves = Number(choice.waves ?? 0);
  const mine = (choice.mine ?? FIRST_HAND).split(',').filter((part) => offer.parts.includes(part));
  const [sail, setSail] = useState(null);
  const [result, setResult] = useState(null);
  const [isFresh, setFresh] = useState(true);
  const [fault, setFault] = useState(null);
  const hands = useRef(null);
  hands.current ??= createHands();
  const seed = useRef(1);
  useEffect(() => () => sail?.stop(), [sail]);

  const start = (again) => {
    sail?.stop();
    if (!again) seed.current = 1 + Math.floor(Math.random() * 9999);
    const setup = { boat: boat.id, wing: wing.id, drill: drill.drill, tws_kn: wind, seed: seed.current, waves };
    setResult(null);
    setFresh(false);
    setFault(null);
    hands.current.reset();
    const next = createSail({ ...setup, mine: mine.join(',') }, hands.current, {
      over(found) {
        remember({ ...setup, mine }, found);
        setResult({ found, setup, mine });
        setSail(null);
      },
      failed(reason) {
        setFault(new Error(reason || t('web.practice.broken')));
        setSail(null);
      },
    });
    setSail(next);
  };
  const stop = () => {
    sail?.stop();
    setSail(null);
  };
  const toggle = (part) => choose({ mine: (mine.includes(part) ? mine.filter((one) => one !== part) : [...mine, part]).join(',') });
  return html`
    <section class="panel drill-choice" aria-label=${t('web.practice.choice')}>
      <div class="choice" role="group" aria-label=${t('web.practice.drill')}>
        ${offer.drills.map((one) => html`<button aria-pressed=${one === drill ? 'true' : 'false'} disabled=${sail !== null} onClick=${() => choose({ drill: one.drill })}>${t(`web.practice.drill.${one.drill}`)}</button>`)}
      </div>
      <label class="field">${t('web.practice.wind')}
        <input type="number" min=${offer.tws_least_kn} max=${offer.tws_most_kn} step="1" value=${wind} disabled=${sail !== null} onChange=${(e) => choose({ tws: Math.min(offer.tws_most_kn, Math.max(offer.tws_least_kn, Number(e.target.value) || 14)) })} /> ${t('web.unit.aws')}</label>
      <fieldset class="mine"><legend>${t('web.practice.mine')}</legend>
        ${offer.parts.map((part) => html`<label><input type="checkbox" checked=${mine.includes(part)} disabled=${sail !== null} onChange=${() => toggle(part)} /> ${t(`web.practice.part.${part}`)}</label>`)}
      </fieldset>
      ${sail
        ? html`<button class="stop" onClick=${stop}>${t('web.practice.stop')}</button>`
        : html`<button class="start" onClick=${() => start(false)}>${t('web.practice.start')}</button>`}
      <label class="field" title=${t('web.practice.waves_title')}>${t('web.practice.waves')}
        <input type="number" min="0" max=${offer.waves_most_m} step="0.1" value=${waves} disabled=${sail !== null} onChange=${(e) => choose({ waves: Math.min(offer.waves_most_m, Math.max(0, Number(e.target.value) || 0)) })} /> ${t('web.unit_of.m')}</label>
      <p class="quiet about">${t(`web.practice.about.${drill.drill}`)}</p>
    </section>
    ${fault && html`<${Fault} fault=${fault} />`}
    <div class="practice-grid">
      <${Stage} offer=${offer} drill=${drill} sail=${sail} hands=${hands.current} mine=${mine} isFresh=${isFresh} />
      <aside class="side">
        ${result && html`<${Result} result=${result} onAgain=${() => start(true)} />`}
        <${Bindings} hands=${hands.current} mine=${mine} />
      </aside>
    </div>`;
}
