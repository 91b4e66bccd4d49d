// The time ledger: seconds lost by cause, leg by leg or boat by boat, and for each figure the stretches that make it up.
import { html, useEffect, useRef, useState } from '../dom.js';
import { duration, fixed, percent } from '../format.js';
import { t, wordFor } from '../text.js';
import { useStore } from '../store.js';

/** Below this a cause is not worth a row (s): half of the last digit shown. */
const NOUGHT = 0.05;

/** Seconds are told in halves: more is not known of them. */
const half = (seconds) => fixed(Math.round(2 * seconds) / 2);

/** Whether a cause's seconds of a boat are larger than their interval. */
const stands = (boat, cause) => boat.causes.find((one) => one.cause === cause)?.stands ?? false;

/** @param {{report: any, boat: any, fleet: any, view: any, onFocus: (name: string) => void}} props */
export function Account({ report, boat, fleet, view, onFocus }) {
  const [by, setBy] = useState('legs');
  const [chosen, setChosen] = useState(null);
  const many = report.boats.length > 1;
  const table = by === 'boats' && many ? byBoats(report, fleet) : byLegs(boat);
  const shown = chosen?.of === boat.boat ? piecesOf(report, boat, chosen) : null;
  useEffect(() => {
    view.light(shown && { spans: shown.pieces });
    return () => view.light(null);
  }, [chosen, boat]);
  const choose = (cause, column) => {
    setChosen({ cause, leg: column.leg, of: column.of ?? boat.boat });
    if (column.of && column.of !== boat.boat) onFocus(column.of);
  };
  return html`
    ${boat.start && html`<${Start} start=${boat.start} />`}
    <div class="account-head"><p class="quiet">${t('web.debrief.ledger_note')}</p>
      ${many && html`<div class="choice" role="group" aria-label=${t('web.debrief.ledger_by')}>
        ${['legs', 'boats'].map((one) => html`<button aria-pressed=${one === by ? 'true' : 'false'} onClick=${() => setBy(one)}>${t(`web.debrief.by_${one}`)}</button>`)}</div>`}
    </div>
    ${boat.ledger.length === 0 ? html`<p class="quiet">${t('web.debrief.no_legs')}</p>` : html`<${Table} table=${table} chosen=${chosen} focus=${boat.boat} choose=${choose} />`}
    ${shown && html`<${Pieces} shown=${shown} view=${view} close=${() => setChosen(null)} />`}`;
}

function byLegs(boat) {
  const columns = boat.ledger.map((one) => ({ leg: one.leg, head: String(one.leg), lines: one.lines }));
  const all = { leg: null, head: t('web.debrief.total'), lines: boat.ledger.flatMap((one) => one.lines) };
  const table = tableOf([...columns, all], (row) => row.values.at(-1));
  const told = (row) => stands(boat, row.cause);
  const errors = new Map(boat.causes.map((one) => [one.cause, one.error_s]));
  return { ...table, rows: [...table.rows.filter(told), ...table.rows.filter((row) => !told(row))], told: table.rows.filter(told).length, errors };
}

function byBoats(report, fleet) {
  const columns = report.boats.map((one) => ({ leg: null, of: one.boat, head: fleet.of(one.boat).letter, lines: one.ledger.flatMap((leg) => leg.lines) }));
  const table = tableOf(columns, (row) => row.values.reduce((sum, value) => sum + value, 0));
  return { ...table, told: table.rows.length, small: (row, c) => !stands(report.boats[c], row.cause) };
}

/** Causes down, the costliest first; those that cost nothing anywhere are left out. */
function tableOf(columns, weight) {
  const causes = [...new Set(columns.flatMap((column) => column.lines.map((line) => line.cause)))];
  const sum = (lines) => lines.reduce((total, line) => total + line.loss_s, 0);
  const rows = causes
    .map((cause) => ({ cause, values: columns.map((column) => sum(column.lines.filter((line) => line.cause === cause))) }))
    .filter((row) => row.values.some((value) => Math.abs(value) >= NOUGHT))
    .sort((a, b) => weight(b) - weight(a));
  return { columns, rows, totals: columns.map((column) => sum(column.lines)) };
}

/** Figures as a grid: arrow keys move between them, Enter or a click shows what one is made of. */
function Table({ table, chosen, focus, choose }) {
  const [last, setAt] = useState([0, table.columns.length - 1]);
  // The table may have become smaller since.
  const at = [Math.min(last[0], table.rows.length - 1), Math.min(last[1], table.columns.length - 1)];
  const grid = useRef(null);
  const most = Math.max(1, ...table.rows.flatMap((row) => row.values).map(Math.abs));
  const move = (event) => {
    const step = { ArrowUp: [-1, 0], ArrowDown: [1, 0], ArrowLeft: [0, -1], ArrowRight: [0, 1] }[event.key];
    if (!step) return;
    event.preventDefault();
    const next = [Math.max(0, Math.min(table.rows.length - 1, at[0] + step[0])), Math.max(0, Math.min(table.columns.length - 1, at[1] + step[1]))];
    setAt(next);
    grid.current.querySelector(`[data-at="${next}"]`).focus();
  };
  const isChosen = (row, column) => chosen && chosen.cause === row.cause && chosen.leg === column.leg && chosen.of === (column.of ?? focus);
  return html`
    <table class="grid" role="grid" ref=${grid} onKeyDown=${move} aria-label=${t('web.debrief.tab.account')}>
      <thead><tr><th>${t('web.debrief.cause')}</th>${table.columns.map((column) => html`<th class=${column.of === focus ? 'n focus' : 'n'} title=${column.of}>${column.head}</th>`)}${table.errors && html`<th class="n" title=${t('web.debrief.interval')}>\u00b1</th>`}</tr></thead>
      <tbody>${table.rows.map((row, r) => html`
        ${r === table.told && html`<tr class="fold"><th scope="rowgroup" colspan=${table.columns.length + 2}>${t('web.debrief.too_small')}</th></tr>`}
        <tr key=${row.cause} class=${r >= table.told ? 'small' : ''}><th scope="row">${wordFor(`web.cause.${row.cause}`, row.cause)}</th>
          ${table.columns.map((column, c) => html`
            <td class=${table.small?.(row, c) ? 'n small' : 'n'}><button class="figure" data-at=${`${r},${c}`} tabindex=${r === at[0] && c === at[1] ? 0 : -1} aria-pressed=${isChosen(row, column) ? 'true' : 'false'}
              onFocus=${() => setAt([r, c])} onClick=${() => choose(row.cause, column)}>
              ${half(row.values[c])}<${Weight} value=${row.values[c]} most=${most} /></button></td>`)}${table.errors && html`<td class="n error">${half(table.errors.get(row.cause) ?? 0)}</td>`}</tr>`)}</tbody>
      <tfoot><tr><th scope="row">${t('web.debrief.total')}</th>${table.totals.map((total) => html`<td class="n"><b>${half(total)}</b></td>`)}</tr></tfoot>
    </table>`;
}

/** A figure's size as a line under it. */
function Weight({ value, most }) {
  const share = (100 * Math.abs(value)) / most;
  return html`<svg class="weight" width="100%" height="3" aria-hidden="true"><rect class=${value < 0 ? 'gain' : 'loss'} x=${`${(100 - share).toFixed(1)}%`} width=${`${share.toFixed(1)}%`} height="3" /></svg>`;
}

/** The stretches behind a figure, the costliest first, and how far it would move in other orders of the ladder. */
function piecesOf(report, boat, { cause, leg }) {
  const start = Date.parse(report.start_utc) / 1000;
  const lines = boat.ledger.filter((one) => leg === null || one.leg === leg).flatMap((one) => one.lines).filter((line) => line.cause === cause);
  const sum = (key) => lines.reduce((total, line) => total + (line[key] ?? line.loss_s), 0);
  const pieces = lines.flatMap((line) => line.pieces ?? [])
    .map((one) => ({ from: start + one.start_s, to: start + one.start_s + one.duration_s, loss: one.loss_s }))
    .sort((a, b) => b.loss - a.loss);
  return { cause, leg, pieces, loss: sum('loss_s'), least: sum('least_s'), most: sum('most_s') };
}

function Pieces({ shown, view, close }) {
  useStore(view.clock);
  const { piece } = useStore(view);
  const section = useRef(null);
  useEffect(() => section.current.scrollIntoView({ block: 'nearest' }), [shown.cause, shown.leg]);
  const most = Math.max(0.001, ...shown.pieces.map((one) => Math.abs(one.loss)));
  const show = (one) => {
    view.showPiece(one);
    view.point((one.from + one.to) / 2);
  };
  const where = shown.leg === null ? t('web.debrief.all_legs') : t('web.debrief.leg_short', { leg: shown.leg });
  return html`
    <section class="pieces" ref=${section} aria-label=${t('web.debrief.pieces_of')}>
      <div class="pieces-head"><h3>${wordFor(`web.cause.${shown.cause}`, shown.cause)}, ${where}: <b class="number">${half(shown.loss)} s</b></h3>
        <button class="plain" onClick=${close}>${t('web.debrief.close')}</button></div>
      <p class="quiet">${wordFor(`web.cause_means.${shown.cause}`, '')}
        ${shown.most - shown.least >= 2 * NOUGHT && ` ${t('web.debrief.other_orders', { least: fixed(shown.least), most: fixed(shown.most) })}`}</p>
      <table>
        <thead><tr><th>${t('web.debrief.at')}</th><th class="n">${t('web.debrief.length')}</th><th class="n">${t('web.debrief.lost_s')}</th><th></th></tr></thead>
        <tbody>${shown.pieces.map((one) => html`
          <tr class=${piece && piece.from === one.from && piece.to === one.to ? 'pick chosen' : 'pick'} tabindex="0" onClick=${() => show(one)} onKeyDown=${(e) => e.key === 'Enter' && show(one)}>
            <td>${view.clock.timeOfDay(one.from)}</td><td class="n">${duration(one.to - one.from)}</td><td class="n">${fixed(one.loss)}</td>
            <td class="bar-cell"><svg width="100%" height="8" aria-hidden="true"><rect class=${one.loss < 0 ? 'gain' : 'loss'} width=${`${((100 * Math.abs(one.loss)) / most).toFixed(1)}%`} height="8" rx="1" /></svg></td></tr>`)}</tbody>
      </table>
    </section>`;
}

/** How the boat started. */
function Start({ start }) {
  const side = start.distance_m < 0 ? 'web.debrief.start_over' : 'web.debrief.start_short';
  return html`
    <p class="start"><b>${t('web.debrief.start')}</b> ${start.early && html`<b>${t('web.debrief.early')}</b> `}
      ${t('web.debrief.crossed', { seconds: fixed(start.crossed_s) })}
      ${start.distance_m !== null && ` ${t(side, { metres: fixed(Math.abs(start.distance_m), 0), speed: fixed(start.speed_kn) })}`}
      ${start.target_ratio !== null && ` ${t('web.debrief.start_ratio', { ratio: percent(start.target_ratio) })}`}</p>`;
}
