// Debrief: one session, its boats leg by leg and over time.
import { html, useEffect, useMemo, useState } from '../dom.js';
import { choose, follow } from '../address.js';
import { getJson, query } from '../api.js';
import { useStore } from '../store.js';
import { createClock, secondsOf } from '../clock.js';
import { duration } from '../format.js';
import { t, wordFor } from '../text.js';
import { useAnswer } from '../hooks.js';
import { Fault, Waiting } from '../shell.js';
import { Bands, Overview } from './bands.js';
import { Boats } from './boats.js';
import { channelName } from './lane.js';
import { Findings } from './findings.js';
import { createFleet } from './fleet.js';
import { Lanes } from './lanes.js';
import { legsOf } from './legs.js';
import { Chart } from './map.js';
import { piecesOf } from './pieces.js';
import { useReport } from './report.js';
import { Strips } from './strips.js';
import { createView } from './view.js';

const NO_PIECES = [];
/** What the left side shows. */
const VIEWS = ['strips', 'both', 'channels'];
/** What is drawn at first, where the log has it. */
const FIRST = [
  'navigation.speedOverGround', 'navigation.speedThroughWater', 'debrief.target_speed', 'environment.wind.speedApparent', 'debrief.tws', 'environment.wind.angleApparent', 'debrief.twa',
  'navigation.headingTrue', 'navigation.courseOverGroundTrue', 'debrief.twd', 'sails.wing.camber', 'sails.wing.twist', 'sails.wing.sheet', 'navigation.rideHeight',
];

export function Place({ item, choice }) {
  const session = useAnswer((signal) => getJson(`/api/sessions/${encodeURIComponent(item ?? 'latest')}`, { signal }), [item]);
  const boats = useAnswer((signal) => getJson('/api/boats', { signal }), []);
  const judge = useAnswer(async (signal) => session.value && getJson(`/api/sessions/${encodeURIComponent(session.value.session)}/judge`, { signal }), [session.value]);
  if (session.fault?.status === 404 && !item) return html`<${NoSession} />`;
  const fault = session.fault ?? boats.fault ?? judge.fault;
  if (fault) return html`<${Fault} fault=${fault} />`;
  if (!session.value || !boats.value || !judge.value) return null;
  const references = referencesOf(boats.value);
  const named = choice.boat && references.find((one) => one.boat === choice.boat && one.wing === choice.wing && one.learned === choice.learned);
  const reference = named || usualReference(references, judge.value);
  return html`<${Session} key=${session.value.session} session=${session.value} of=${choice.of} see=${choice.see} at=${choice.at} lasts=${choice.lasts} besides=${choice.beside} references=${references} reference=${reference} />`;
}

function NoSession() {
  return html`<div class="bar"><h1>${t('web.debrief.title')}</h1></div>
    <section class="panel empty"><p>${t('web.debrief.none')}</p><p><a href="/library" onClick=${follow}>${t('web.place.library')}</a></p></section>`;
}

function Session({ session, of, see, at, lasts, besides, references, reference }) {
  const boat = (session.boats.find((one) => one.boat === of) ?? session.boats[0]).boat;
  const fleet = useMemo(() => createFleet(session.boats.map((one) => one.boat)), [session]);
  const view = useMemo(() => createView(secondsOf(session.start_utc), secondsOf(session.end_utc), createClock(session)), [session]);
  // Opened at a moment, seconds from the session's begin.
  useEffect(() => {
    const from = view.whole.from + Number(at);
    if (at && Number.isFinite(from)) view.show(from - 15, from + 15 + (Number(lasts) || 0));
  }, [view, at, lasts]);
  const against = { boat: reference.boat, wing: reference.wing, learned: reference.learned };
  // Asked anew when a calibration was accepted or taken back.
  const [calibrated, setCalibrated] = useState(0);
  const { report, work, fault } = useReport(session.session, against, calibrated);
  const found = report?.boats.find((one) => one.boat === boat) ?? null;
  const pieces = useMemo(() => (found ? piecesOf(report, found) : NO_PIECES), [found]);
  const legs = useMemo(() => new Map((report?.boats ?? []).map((one) => [one.boat, legsOf(report, one)])), [report]);
  const baseOf = (name) => `/api/sessions/${encodeURIComponent(session.session)}/boats/${encodeURIComponent(name)}`;
  const base = baseOf(boat);
  // Asked again when the debrief is made: it adds channels of its own.
  const told = `${reference.key} ${calibrated}`;
  const channels = useAnswer(async (signal) => ({ against: told, ...(await getJson(`${base}/channels${query(against)}`, { signal })) }), [base, found]);
  const other = besides !== boat && fleet.of(besides) ? besides : null;
  const otherChannels = useAnswer(async (signal) => other && { of: other, ...(await getJson(`${baseOf(other)}/channels${query(against)}`, { signal })) }, [other, found]);
  const beside = other && otherChannels.value?.of === other ? { boat: fleet.of(other), base: baseOf(other), paths: otherChannels.value.channels.map((channel) => channel.path) } : null;
  const [picked, setPicked] = useState(null);
  // Kept here: a debrief that is made anew shows the same list.
  const [tab, setTab] = useState('account');
  const focus = (name) => choose({ of: name });
  if (channels.fault) return html`<${Fault} fault=${channels.fault} />`;
  if (!channels.value) return null;
  // Until the channels of another reference are told, those of the debrief may not be there.
  const isTold = channels.value.against === told;
  const chosen = (picked ?? firstChannels(channels.value)).filter((path) => isTold || !path.startsWith('debrief.'));
  const hasStrips = [...legs.values()].some((one) => one.length > 0);
  const seen = hasStrips ? (VIEWS.includes(see) ? see : 'strips') : 'channels';
  return html`
    <${Head} session=${session} boat=${boat} view=${view} channels=${seen !== 'strips' && channels.value} chosen=${chosen} setPicked=${setPicked} references=${references} reference=${reference} isMade=${report !== null}>
      ${hasStrips && html`<div class="choice" role="group" aria-label=${t('web.debrief.see')}>
        ${VIEWS.map((one) => html`<button aria-pressed=${one === seen ? 'true' : 'false'} onClick=${() => choose({ see: one })}>${t(`web.debrief.see_${one}`)}</button>`)}</div>`}
    <//>
    ${session.boats.length > 1 && html`
      <${Boats} fleet=${fleet} focus=${boat} view=${view} legs=${legs} onFocus=${focus}>
        ${seen !== 'strips' && html`<${Beside} fleet=${fleet} focus=${boat} other=${other} />`}
      <//>`}
    <div class="debrief-grid">
      <section class="panel charts" aria-label=${t('web.debrief.charts')}>
        <${Overview} view=${view} pieces=${pieces} />
        ${seen !== 'channels' && html`<${Strips} fleet=${fleet} focus=${boat} view=${view} legs=${legs} pieces=${pieces} narrow=${seen === 'both'} />`}
        ${seen !== 'strips' && html`
          <${Bands} view=${view} pieces=${pieces} onPick=${view.showPiece} />
          <${Lanes} base=${base} beside=${beside} reference=${against} lanes=${lanesOf(channels.value, chosen)} view=${view} pieces=${pieces} />`}
        <${Keys} strips=${seen !== 'channels'} lanes=${seen !== 'strips'} />
      </section>
      <aside class="side">
        <section class="panel track-panel"><${Chart} session=${session.session} fleet=${fleet} focus=${boat} view=${view} pieces=${pieces} /></section>
        ${fault && html`<${Fault} fault=${fault} />`}
        ${!report && !fault && html`<${Making} work=${work} />`}
        ${found && html`<${Findings} report=${report} against=${against} boat=${found} fleet=${fleet} pieces=${pieces} view=${view} tab=${tab} setTab=${setTab} onFocus=${focus} onCalibrated=${() => setCalibrated(calibrated + 1)} />`}
      </aside>
    </div>`;
}

/** Whose channels are drawn beside those of the boat looked at. */
function Beside({ fleet, focus, other }) {
  return html`
    <label class="field beside">${t('web.debrief.beside')}
      <select value=${other ?? ''} onChange=${(e) => choose({ beside: e.target.value || null })}>
        <option value="">${t('web.debrief.no_boat')}</option>
        ${fleet.boats.filter((one) => one.name !== focus).map((one) => html`<option value=${one.name}>${one.name}</option>`)}
      </select></label>`;
}

function Making({ work }) {
  return html`<section class="panel"><${Waiting} text=${t('web.debrief.making')} />
    ${work?.total > 1 && html`<progress value=${work.done} max=${work.total} aria-label=${t('web.debrief.making')} />`}</section>`;
}

/** What the speed can be held against: the boat's own best, or the targets of a boat file and wing, the model's or those learnt. */
function referencesOf({ boats }) {
  const described = boats.filter((one) => !one.faults.length).flatMap((one) =>
    one.wings.flatMap((wing) => {
      const model = { key: `${one.id}/${wing.id}`, boat: one.id, wing: wing.id, name: t('web.debrief.targets_of', { boat: one.title, wing: wing.id }) };
      const learned = { ...model, key: `${model.key}/learned`, learned: 'yes', name: t('web.debrief.learned_of', { boat: one.title, wing: wing.id }) };
      return wing.learned ? [model, learned] : [model];
    }));
  return [{ key: '', name: t('web.debrief.own_best') }, ...described];
}

const LAST = 'trimwright.reference';

/** The one picked last on this machine: most sail the same boat every day. Who never picked gets what the session was judged by last. */
function usualReference(references, judge) {
  const last = localStorage.getItem(LAST);
  return references.find((one) => (last === null ? one.boat === judge.boat && one.wing === judge.wing : one.key === last)) ?? references[0];
}

function ReferencePicker({ references, reference }) {
  const pick = (key) => {
    const { boat = null, wing = null, learned = null } = references.find((one) => one.key === key);
    localStorage.setItem(LAST, key);
    choose({ boat, wing, learned });
  };
  return html`
    <label class="field">${t('web.debrief.reference')}
      <select value=${reference.key} onChange=${(e) => pick(e.target.value)}>${references.map((one) => html`<option value=${one.key}>${one.name}</option>`)}</select>
    </label>`;
}

function Head({ session, boat, view, channels, chosen, setPicked, references, reference, isMade, children }) {
  const { from, to } = useStore(view);
  useStore(view.clock);
  const whole = from <= view.whole.from && to >= view.whole.to;
  return html`
    <div class="bar">
      <h1>${session.session}</h1>
      ${session.boats.length === 1 && html`<span>${boat}</span>`}
      <${ReferencePicker} references=${references} reference=${reference} />
      <output class="window-shown">${view.clock.timeOfDay(from)} \u2013 ${view.clock.timeOfDay(to)} <span title=${view.clock.how()}>${view.clock.name()}</span> (${duration(to - from)})</output>
      ${view.clock.hasLocal && html`<button aria-pressed=${view.clock.get().utc ? 'true' : 'false'} onClick=${view.clock.turn}>${t('web.clock.utc')}</button>`}
      <a href=${`/quick/${encodeURIComponent(session.session)}${query({ of: boat, boat: reference.boat, wing: reference.wing, learned: reference.learned })}`} onClick=${follow}>${t('web.place.quick')}</a>
      ${isMade && html`<a href=${`/api/sessions/${encodeURIComponent(session.session)}/report${query({ boat: reference.boat, wing: reference.wing, learned: reference.learned })}`} target="_blank" rel="noopener">${t('web.debrief.report')}</a>`}
      <button onClick=${view.all} disabled=${whole}>${t('web.debrief.whole')}</button>
      <span class="grow"></span>
      ${channels && html`<${ChannelPicker} channels=${channels} chosen=${chosen} setPicked=${setPicked} />`}
      ${children}
    </div>`;
}

/** Which channels are drawn, lane by lane. */
function ChannelPicker({ channels, chosen, setPicked }) {
  const turn = (path) => setPicked(chosen.includes(path) ? chosen.filter((one) => one !== path) : [...chosen, path]);
  return html`
    <details class="picker"><summary>${t('web.debrief.channels', { shown: chosen.length, all: channels.channels.length })}</summary>
      <div class="picker-list">${[...channels.lanes, 'other'].map((lane) => {
        const here = channels.channels.filter((channel) => channel.lane === lane);
        return here.length > 0 && html`
          <fieldset><legend>${wordFor(`web.lane.${lane}`, lane)}</legend>
            ${here.map((channel) => html`<label><input type="checkbox" checked=${chosen.includes(channel.path)} onChange=${() => turn(channel.path)} /> ${channelName(channel.path)}</label>`)}
          </fieldset>`;
      })}</div>
    </details>`;
}

function firstChannels({ channels }) {
  const paths = channels.map((channel) => channel.path);
  const compass = paths.includes('navigation.headingTrue') ? [] : ['navigation.headingMagnetic'];
  return paths.filter((path) => FIRST.includes(path) || compass.includes(path));
}

/** Chosen channels by lane; those of no known lane get one each. */
function lanesOf({ lanes, channels }, chosen) {
  const shown = channels.filter((channel) => chosen.includes(channel.path));
  const known = lanes.map((name) => ({ name, channels: shown.filter((channel) => channel.lane === name) }));
  const others = shown.filter((channel) => channel.lane === 'other').map((channel) => ({ name: channelName(channel.path), channels: [channel] }));
  return [...known, ...others].filter((lane) => lane.channels.length > 0);
}

function Keys({ strips, lanes }) {
  return html`
    <p class="keys">
      ${strips && html`<span>${t('web.debrief.strips_mouse')}</span><span><kbd>\u2191</kbd> <kbd>\u2193</kbd> ${t('web.debrief.key_leg')}</span>
        <span><kbd>\u2190</kbd> <kbd>\u2192</kbd> ${t('web.debrief.key_cursor')}</span>`}
      ${lanes && html`<span>${t('web.debrief.mouse')}</span>`}
      ${lanes && !strips && html`<span><kbd>\u2190</kbd> <kbd>\u2192</kbd> ${t('web.debrief.key_pan')}</span>
        <span><kbd>\u2191</kbd> <kbd>\u2193</kbd> ${t('web.debrief.key_zoom')}</span><span><kbd>,</kbd> <kbd>.</kbd> ${t('web.debrief.key_cursor')}</span>`}
      <span><kbd>0</kbd> ${t('web.debrief.key_all')}</span></p>`;
}
