// What the session's instruments read wrongly: solved, shown before and after, accepted or taken back.
import { html, useState } from '../dom.js';
import { getJson, query, remove, send } from '../api.js';
import { useAnswer } from '../hooks.js';
import { fixed } from '../format.js';
import { t } from '../text.js';
import { Fault, Waiting } from '../shell.js';

export function Instruments({ report, against, boat, onCalibrated }) {
  const path = `/api/sessions/${encodeURIComponent(report.session)}/calibration`;
  const asked = query(against);
  const known = useAnswer((signal) => getJson(`${path}${asked}`, { signal }), [path, asked]);
  const [fault, setFault] = useState(null);
  const [busy, setBusy] = useState(false);
  const ask = async (asking) => {
    setBusy(true);
    try {
      await asking();
      onCalibrated();
    } catch (refused) {
      setFault(refused);
      setBusy(false);
    }
  };
  if (known.fault) return html`<${Fault} fault=${known.fault} />`;
  if (!known.value) return html`<${Waiting} text=${t('web.calibrate.solving')} />`;
  const found = known.value.boats.find((one) => one.boat === boat.boat);
  return html`
    ${fault && html`<${Fault} fault=${fault} />`}
    <p id="calibration">${boat.calibration ?? t('web.calibrate.none_in_force')}</p>
    ${found.refused
      ? html`<p class="quiet">${t(`web.calibrate.refused.${found.refused}`, { port: fixed(found.port_s, 0), starboard: fixed(found.starboard_s, 0) })}</p>`
      : html`<${Found} found=${found} clock=${report.start_utc} />`}
    <p>
      <button name="accept" disabled=${busy || known.value.boats.every((one) => one.refused)} onClick=${() => ask(() => send(`${path}${asked}`, {}))}>${t('web.calibrate.accept')}</button>
      ${' '}<button name="undo" disabled=${busy || !known.value.in_force} onClick=${() => ask(() => remove(path))}>${t('web.calibrate.undo')}</button>
    </p>
    <p class="quiet">${t('web.calibrate.all_boats')} ${known.value.caution}</p>`;
}

function Found({ found }) {
  return html`
    <table>
      <thead><tr><th>${t('web.calibrate.unknown')}</th><th class="n">${t('web.calibrate.value')}</th><th class="n">\u00b1</th><th></th></tr></thead>
      <tbody>${found.estimates.map((one) => html`
        <tr class=${one.verdict === 'told' ? '' : 'small'}><td>${t(`calibrate.unknown.${one.unknown}`)}</td><td class="n">${sized(one, 'value')}</td><td class="n">${sized(one, 'standard_error')}</td><td class="wrap">${t(`calibrate.verdict.${one.verdict}`)}</td></tr>`)}</tbody>
    </table>
    ${found.correlations.map((one) => html`<p class="quiet">${t('web.calibrate.correlation', { one: t(`calibrate.unknown.${one.one}`), other: t(`calibrate.unknown.${one.other}`), correlation: fixed(one.correlation, 2) })}</p>`)}
    ${found.not_apart.map((one) => html`<p class="quiet">${t('web.calibrate.not_apart', { unknowns: one.unknowns.map((key) => t(`calibrate.unknown.${key}`)).join(', '), remedy: t(`calibrate.remedy.${one.remedy}`) })}</p>`)}
    <${Picture} winds=${found.winds} />`;
}

const sized = (one, key) => (one[`${key}_deg`] === undefined ? `${fixed(100 * one[`${key}_ratio`], 1)} %` : `${fixed(one[`${key}_deg`], 2)}\u00b0`);

const WIDTH = 320;
const HEIGHT = 110;

/** Direction of the wind over time, by tack: as read above, as corrected below; letters and not colours tell the tacks. */
function Picture({ winds }) {
  if (!winds.length) return null;
  const first = winds[0].before_twd_deg;
  const turned = (twd) => ((twd - first + 540) % 360) - 180;
  const all = winds.flatMap((one) => [turned(one.before_twd_deg), turned(one.after_twd_deg)]);
  const low = Math.min(...all);
  const high = Math.max(...all, low + 1);
  const from = winds[0].start_s;
  const to = Math.max(from + 1, winds.at(-1).start_s);
  const x = (one) => 8 + ((one.start_s - from) / (to - from)) * (WIDTH - 16);
  const y = (twd) => 12 + ((high - turned(twd)) / (high - low)) * (HEIGHT - 20);
  return ['before', 'after'].map((key) => html`
    <figure class="calibration"><figcaption>${t(`web.calibrate.${key}`, { span: fixed(high - low, 0) })}</figcaption>
      <svg viewBox=${`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label=${t(`web.calibrate.${key}`, { span: fixed(high - low, 0) })}>
        ${winds.map((one) => html`<text x=${x(one)} y=${y(one[`${key}_twd_deg`])} class=${one.tack} font-size="9" text-anchor="middle" fill="currentColor">${t(one.tack === 'port' ? 'web.side.port' : 'web.side.starboard')}</text>`)}
      </svg></figure>`);
}
