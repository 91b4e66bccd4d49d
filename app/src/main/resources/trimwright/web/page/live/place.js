// Live: for the trimmer afloat. Half a second at 0.8 m; what state the boat is in rules what is shown.
import { html, useEffect, useRef, useState } from '../dom.js';
import { useStore } from '../store.js';
import { t } from '../text.js';
import { createStream, valuesOf } from './stream.js';
import { size } from './size.js';
import { useMark } from './mark.js';
import { MomentBar, SpeedGauge, TrimBar } from './gauge.js';
import { Speak, silenceText, useCall } from './call.js';
import { Faults } from './faults.js';
import { Key, Ruler } from './dock.js';

/** A figure that changes more often cannot be read (chosen). */
const HOLD = 500;
const DASH = '\u2013';

export function Place() {
  const [stream] = useState(createStream);
  useEffect(() => () => stream.close(), [stream]);
  const { state, heard } = useStore(stream);
  const { pixels } = useStore(size);
  const mark = useMark();
  const call = useCall(state);
  const values = state ? valuesOf(state, state.own) : {};
  const what = !heard || !state ? 'no_link' : stateOf(values.state ?? 'no_data', state);
  return html`
    <div class=${`live ${what}`} style=${{ '--mm': `${pixels}px` }}>
      <${Strip} state=${state} what=${what} result=${mark.result} call=${call} />
      <${Body} what=${what} state=${state} values=${values} mark=${mark} call=${call} stops=${state?.dock_stops ?? []} />
      ${what !== 'eyes_out' && html`<${Faults} values=${values} />`}
      <p class="lookout"><b>${t('web.caution.mark')}</b> ${t('web.live.caution')}</p>
    </div>`;
}

/** Before a start the line matters more than the target; turns still want the eyes out. */
function stateOf(sailing, state) {
  const straight = ['straight', 'on_foils', 'off_foils'].includes(sailing);
  return straight && Number.isFinite(state['start.to_gun_s']) ? 'start' : sailing;
}

/** What is always to be known: the event's mode, whose data, whether they are kept. */
function Strip({ state, what, result, call }) {
  if (!state) return html`<header class="strip"><b>${t('web.shell.name')}</b></header>`;
  const replay = state.replay_rate_ratio > 0;
  const lost = state.disk_fault;
  return html`
    <header class="strip">
      <b class="event">${t(`web.live.event.${state.event}`)}</b>
      <span>${state.own}</span>
      ${replay ? html`<b>${t('web.live.replay', { rate: state.replay_rate_ratio })}</b>`
        : lost ? html`<b class="alarm">${t('web.live.not_recording')}</b>` : html`<span>${t('web.live.recording')}</span>`}
      ${what === 'off_foils' && html`<b class="event">${t('web.live.off_foils')}</b>`}
      ${state.dock_stops?.length > 0 && html`<b class="event">${t('web.live.dock_check', { count: state.dock_stops.length })}</b>`}
      ${call.tone !== 'none' && html`<b class="alarm">${t(`web.live.tone.${call.tone}`)}</b>`}
      ${call.muted > 0 ? html`<b>${t('web.live.calls.muted', { seconds: call.muted })}</b>` : html`<span>${silenceText(state)}</span>`}
      ${result && what !== 'eyes_out' && html`<b class="marked">${t(`web.live.mark.${result}`)}</b>`}
    </header>`;
}

function Body({ what, state, values, mark, call, stops }) {
  switch (what) {
    case 'eyes_out':
      return html`<main class="word">${t('web.live.eyes_out')}</main>`;
    case 'no_link':
      return html`<main class="word">${t('web.live.no_link')}</main>`;
    case 'no_data':
      return html`<main class="dock"><div class="word">${t('web.live.no_data')}</div><${Stops} stops=${stops} /><${Ruler} /><${Key} mark=${mark} /><${Speak} /></main>`;
    case 'dock':
      return html`
        <main class="dock">
          <div class="figures">
            <${Figure} name="tws" value=${values.tws_kn} decimals=${0} unit="kn" />
            <${Figure} name="twd" value=${values.twd_deg} decimals=${0} unit="\u00b0" digits=${3} />
          </div>
          <${Stops} stops=${stops} />
          <${Ruler} /><${Key} mark=${mark} /><${Speak} />
        </main>`;
    case 'start':
      return html`<${Start} state=${state} />`;
    default:
      return html`<${Straight} what=${what} values=${values} call=${call} />`;
  }
}

/** What the dock check said must be put right first, while there is time to do it. */
function Stops({ stops }) {
  return stops.length > 0 && html`<p class="faults">${t('web.live.dock_stops', { stops: stops.join('  ·  ') })}</p>`;
}

/** Before the gun: time, way to the line, seconds that can still be lost; what to do, in the talk card's words. */
function Start({ state }) {
  const line = state['start.to_line_m'];
  const least = state['start.spare_least_s'];
  return html`
    <main class="straight">
      ${state['start.text'] ? html`<div class="call" role="status">${state['start.text']}</div>` : html`<span></span>`}
      <div class="figures">
        <${Figure} name="to_gun" value=${state['start.to_gun_s']} decimals=${0} unit="s" signed />
        <${Figure} name=${line < 0 ? 'beyond' : 'to_line'} value=${line} decimals=${0} unit="m" />
        <${Figure} name="spare" value=${state['start.spare_s']} decimals=${0} unit="s" signed />
      </div>
      <p class="least">${Number.isFinite(least) ? t('web.live.spare_least', { seconds: String(least).replace('-', '\u2212') }) : ''}</p>
    </main>`;
}

function Straight({ what, values, call }) {
  const off = what === 'off_foils';
  return html`
    <main class="straight">
      ${call.shown ? html`<div class="call" role="status">${call.shown}</div>` : html`<${SpeedGauge} values=${values} />`}
      <div class="figures">
        <${Figure} name="speed" value=${values.speed_kn} decimals=${1} unit="kn" />
        ${off ? html`<${Figure} name="awa" value=${values.awa_deg} decimals=${0} unit="\u00b0" />`
          : html`<${Figure} name="twa" value=${values.twa_deg} decimals=${0} unit="\u00b0" />`}
        <${Figure} name="tws" value=${values.tws_kn} decimals=${0} unit="kn" />
      </div>
      <div class="trims">
        ${['sheet', 'twist', 'camber'].map((control) => html`<${TrimBar} key=${control} control=${control} values=${values} />`)}
        <${MomentBar} values=${values} />
      </div>
    </main>`;
}

/** One number, large; its decimals half as large. */
function Figure({ name, value, decimals, unit, digits = 0, signed = false }) {
  const shown = useHeld(value);
  const known = Number.isFinite(shown);
  const text = known ? (signed && shown < 0 ? '\u2212' : '') + Math.abs(shown).toFixed(decimals) : DASH;
  const [whole, part] = text.split('.');
  const side = known && (name === 'twa' || name === 'awa') ? t(shown >= 0 ? 'web.live.side.starboard' : 'web.live.side.port') : '';
  return html`
    <div class="figure">
      <span class="name">${t(`web.live.${name}`)} <span>${side}</span></span>
      <span class="value">${whole.padStart(known ? digits : 0, '0')}${part && html`<small>.${part}</small>`}<span class="unit">${unit}</span></span>
    </div>`;
}

/** The value, renewed twice a second at most; gone at once where it is not known. */
function useHeld(value) {
  const held = useRef({ value, at: 0 });
  const now = performance.now();
  if (!Number.isFinite(value) || !Number.isFinite(held.current.value) || now - held.current.at >= HOLD) {
    held.current = { value, at: now };
  }
  return held.current.value;
}
