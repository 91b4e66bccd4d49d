// Lines of a check: what stops first, then notes; what passes is folded away.
import { html } from '../dom.js';
import { fixed } from '../format.js';
import { t } from '../text.js';

const NONE = '-';

export function Result({ check }) {
  const of = (verdict) => check.lines.filter((line) => line.verdict === verdict);
  const begun = check.start_utc.slice(0, 19).replace('T', ' ').replace('Z', '');
  return html`
    <section class="panel dock-lines">
      <h2>${t('web.dock.counts', { stop: check.stop, note: check.note, pass: check.pass })}</h2>
      <p class="quiet">${t('web.dock.from', { time: begun, boat: check.described_by, wing: check.wing })}</p>
      <ul>${[...of('stop'), ...of('note')].map((line) => html`<${Line} line=${line} />`)}</ul>
      <details open=${check.stop + check.note === 0}><summary>${t('web.dock.passes', { count: check.pass })}</summary>
        <ul>${of('pass').map((line) => html`<${Line} line=${line} />`)}</ul></details>
      ${check.prior.length > 0 && html`<${Prior} prior=${check.prior} />`}
      ${check.boat_file_lines.length > 0 && html`
        <h3>${t('web.dock.file_lines')}</h3><pre>${check.boat_file_lines.join('\n')}</pre>`}
      <p class="quiet">${check.caution}</p>
    </section>`;
}

function Line({ line }) {
  return html`
    <li class=${line.verdict}>
      <b>${t(`web.dock.${line.verdict}`)}</b>
      <span class="what">${line.what}</span>
      <span class="number">${line.read === NONE ? '' : line.read}</span>
      <span class="number quiet">${line.expected === NONE ? '' : t('web.dock.expected', { expected: line.expected })}</span>
      <span class="number quiet">${line.difference === NONE ? '' : t('web.dock.difference', { difference: line.difference })}</span>
      ${line.says && html`<span class="says">${line.says}</span>`}
    </li>`;
}

function Prior({ prior }) {
  const text = (one) =>
    one.quantity === 'sheet_load'
      ? `${fixed(one.factor_ratio, 3)} \u00b1 ${fixed(one.standard_error_ratio, 3)}`
      : `${fixed(one.offset_deg, 2)}\u00b0 \u00b1 ${fixed(one.standard_error_deg, 2)}\u00b0`;
  return html`
    <h3>${t('web.dock.prior')}</h3>
    <p class="quiet">${t('web.dock.prior_how')}</p>
    <dl class="dock-prior">${prior.map((one) => html`<div><dt>${t(`web.dock.quantity.${one.quantity}`)}</dt><dd class="number">${text(one)}</dd></div>`)}</dl>`;
}
