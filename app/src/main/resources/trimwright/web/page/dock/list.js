// The crew's list, called by a clock: what to do now, for how long, and what comes next. No glance back is needed.
import { html, useEffect, useState } from '../dom.js';
import { choose } from '../address.js';
import { getJson } from '../api.js';
import { t } from '../text.js';
import { useAnswer } from '../hooks.js';

const KEPT = 'trimwright.dock.begun';
const minutes = (seconds) => `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
const utc = (millis) => new Date(millis).toISOString().replace(/\.\d+Z$/, 'Z');

export function List({ open, withSession }) {
  const { value } = useAnswer((signal) => getJson('/api/dock-list', { signal }), []);
  const [begun, setBegun] = useState(Number(localStorage.getItem(KEPT)) || null);
  const [now, setNow] = useState(Date.now());
  useEffect(() => {
    const timer = setInterval(() => setNow(Date.now()), 250);
    return () => clearInterval(timer);
  }, []);
  if (!value) return null;
  const begin = () => {
    const at = Date.now();
    localStorage.setItem(KEPT, String(at));
    setBegun(at);
    setNow(at);
  };
  const at = begun === null ? -1 : (now - begun) / 1000;
  const current = value.steps.findIndex((step) => at >= step.begin_s && at < step.end_s);
  const last = value.steps[value.steps.length - 1].end_s;
  return html`
    <details class="panel dock-list" open=${open}>
      <summary><h2>${t('web.dock.list')}</h2></summary>
      <p>${t('web.dock.list_how')}</p>
      <p class="bar"><button onClick=${begin}>${t(begun === null ? 'web.dock.begin' : 'web.dock.again')}</button>
        ${begun !== null && html`<span>${t('web.dock.begun', { time: utc(begun) })} ${at >= last ? t('web.dock.done') : ''}</span>`}
        ${begun !== null && withSession && html`<button class="plain" onClick=${() => choose({ start_utc: utc(begun) })}>${t('web.dock.use_start')}</button>`}</p>
      <ol>${value.steps.map((step, i) => html`
        <li class=${i === current ? 'now' : at >= step.end_s ? 'past' : ''} aria-current=${i === current ? 'step' : null}>
          <span class="number">${minutes(step.begin_s)}</span> <span>${step.what}
            ${i === current && html` <b class="number">${t('web.dock.left', { seconds: Math.ceil(step.end_s - at) })}</b>`}</span></li>`)}
      </ol>
    </details>`;
}
