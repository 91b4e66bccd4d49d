// Prepare: what to aim at. Boat and wing on top, lanes of speed on the left, the chosen point on the right.
import { html, useEffect, useState } from '../dom.js';
import { choose } from '../address.js';
import { getJson } from '../api.js';
import { t } from '../text.js';
import { useAnswer } from '../hooks.js';
import { Fault, Waiting } from '../shell.js';
import { SectionsNote, sectionPart, useSections } from '../flow.js';
import { useBook } from './book.js';
import { nearestPoint, lanesOf } from './points.js';
import { SpeedLanes } from './lanes.js';
import { PointPanel } from './point.js';
import { LaneTable } from './table.js';
import { Cards } from './cards.js';
import { Choose } from './choose.js';
import { Plans } from './plans.js';

/** What the server takes where the address says nothing (per cent). */
const USUAL_TURBULENCE = '8';

export function Place({ choice }) {
  const [turn, setTurn] = useState(0);
  const readAgain = () => setTurn((old) => old + 1);
  // A boat file is changed in an editor: coming back to this window is the moment to look.
  useEffect(() => {
    window.addEventListener('focus', readAgain);
    return () => window.removeEventListener('focus', readAgain);
  }, []);
  const boats = useAnswer((signal) => getJson('/api/boats', { signal }), [turn]);
  if (boats.fault) return html`<${Fault} fault=${boats.fault} />`;
  if (!boats.value) return null;
  const boat = boats.value.boats.find((one) => one.id === choice.boat) ?? boats.value.boats[0];
  return html`
    <div class="bar">
      <h1>${t('web.prepare.title')}</h1>
      <label class="field">${t('web.prepare.boat')}
        <select value=${boat.id} onChange=${(e) => choose({ boat: e.target.value, wing: null })}>
          ${boats.value.boats.map((one) => html`<option value=${one.id}>${one.file ? `${one.title} (${one.id})` : one.title}</option>`)}
        </select>
      </label>
      ${boat.faults.length === 0 && html`<${WingPicker} boat=${boat} choice=${choice} />`}
      <label class="field">${t('web.prepare.turbulence')}
        <input name="turbulence" type="number" min="0.5" max="30" step="any" size="4" title=${t('web.prepare.turbulence_note')}
          value=${choice.turbulence ?? USUAL_TURBULENCE} onChange=${(e) => choose({ turbulence: e.target.value || null })} />
      </label>
      ${boat.file && html`
        <div class="file">
          <span class="quiet">${boat.file}</span>
          <button onClick=${readAgain}>${t('web.prepare.read_again')}</button>
        </div>`}
    </div>
    ${boat.faults.length ? html`<${FileFaults} boat=${boat} />` : html`<${Targets} boat=${boat} choice=${choice} />`}`;
}

function WingPicker({ boat, choice }) {
  return html`
    <label class="field">${t('web.prepare.wing')}
      <select value=${wingOf(boat, choice).id} onChange=${(e) => choose({ wing: e.target.value })}>
        ${boat.wings.map((one) => html`<option value=${one.id}>${t('web.prepare.wing_name', { id: one.id, span: one.span_m.toFixed(1) })}</option>`)}
      </select>
    </label>`;
}

const wingOf = (boat, choice) => boat.wings.find((one) => one.id === choice.wing) ?? boat.wings[0];

function FileFaults({ boat }) {
  return html`
    <div class="fault" role="alert">
      <b>${t(boat.faults.length === 1 ? 'web.prepare.fault' : 'web.prepare.faults', { count: boat.faults.length, file: boat.file ?? boat.title })}</b>
      <ul>${boat.faults.map((one) => html`<li>${one}</li>`)}</ul>
    </div>`;
}

function Targets({ boat, choice }) {
  const wing = wingOf(boat, choice);
  const sections = useSections(boat, wing);
  const { book, earlier, work, fault, forgetEarlier } = useBook(boat, wing, sectionPart(sections), choice.turbulence);
  if (fault) return html`<${Fault} fault=${fault} />`;
  if (!book) return html`<${Working} work=${work} />`;
  const lanes = lanesOf(book);
  const point = nearestPoint(lanes, choice);
  return html`
    ${work && html`<${Working} work=${work} />`}
    <${SectionsNote} said=${sections} made=${book.section} />
    <div class=${work ? 'prepare-grid stale' : 'prepare-grid'}>
      <section class="panel lanes-panel" aria-labelledby="lanes-title">
        <div class="lanes-head">
          <h2 id="lanes-title">${t('web.prepare.lanes')}</h2>
          <${Legend} lanes=${lanes} earlier=${earlier} forgetEarlier=${forgetEarlier} />
        </div>
        <${SpeedLanes} lanes=${lanes} earlier=${earlier && lanesOf(earlier)} chosen=${point}
          onChoose=${(one) => choose({ tws: one.tws_kn, twa: one.twa_deg, mode: one.mode === 'angle' ? null : one.mode })} />
      </section>
      <${PointPanel} boat=${boat} wing=${wing} point=${point} aimReason=${book.aim_reason} />
      <${LaneTable} lane=${lanes.find((one) => one.tws === point?.tws_kn)} chosen=${point} />
      <${Cards} boat=${boat} wing=${wing} point=${point} section=${sectionPart(sections)} turbulence=${choice.turbulence} />
      <${Plans} key=${`${boat.id} ${wing.id} ${book.turbulence_ratio}`} boat=${boat} wing=${wing} tws=${point?.tws_kn} turbulence=${100 * book.turbulence_ratio} />
      <${Choose} key=${`${boat.id} ${book.turbulence_ratio}`} boat=${boat} tws=${point?.tws_kn} turbulence=${100 * book.turbulence_ratio} />
    </div>`;
}

function Legend({ lanes, earlier, forgetEarlier }) {
  return html`
    <div class="legend">
      <span><svg width="26" height="10"><path class="line-foiling" d="M1 5H25" /></svg>${t('web.prepare.foiling')}</span>
      <span><svg width="26" height="10"><path class="line-hulls" d="M1 5H25" /></svg>${t('web.prepare.on_hulls')}</span>
      <span><svg width="14" height="12"><path class="best" d="M7 1L13 11H1Z" /></svg>${t('web.prepare.best_upwind')}</span>
      <span><svg width="14" height="12"><path class="best" d="M7 11L1 1H13Z" /></svg>${t('web.prepare.best_downwind')}</span>
      ${lanes.some((lane) => lane.unsolved.length) && html`<span><svg width="12" height="12"><path class="none" d="M2 2l8 8m0 -8l-8 8" /></svg>${t('web.prepare.unsolved')}</span>`}
      ${earlier && html`
        <span><svg width="26" height="10"><path class="line-earlier" d="M1 5H25" /></svg>${t('web.prepare.earlier')}
        <button class="plain" onClick=${forgetEarlier}>${t('web.prepare.forget_earlier')}</button></span>`}
    </div>`;
}

function Working({ work }) {
  if (!work) return html`<${Waiting} text=${t('web.prepare.starting')} />`;
  return html`
    <p class="waiting" role="status">
      <progress value=${work.done} max=${work.total} aria-label=${t('web.prepare.computing')} />
      ${' '}${t('web.prepare.computing')} ${t('web.prepare.done_of', { done: work.done, total: work.total })}
    </p>`;
}
