// What cannot be used, by name and age.
import { html } from '../dom.js';
import { duration } from '../format.js';
import { t } from '../text.js';

/** Sentences of a boat's instruments that are silent or frozen. */
export function faultTexts(values) {
  const faults = (values.faults ?? []).map((fault) => fault.split(' '));
  if (values.state === 'no_data' && faults.length > 1 && faults.every(([, kind]) => kind === 'silent')) {
    const youngest = Math.min(...faults.map(([, , seconds]) => Number(seconds)));
    return [t('web.live.fault.all', { age: duration(youngest) })];
  }
  return faults.map(([sensor, kind, seconds]) => {
    return t(`web.live.fault.${kind}`, { sensor: t(`web.live.sensor.${sensor}`), age: duration(Number(seconds)) });
  });
}

export function Faults({ values }) {
  const faults = faultTexts(values);
  return faults.length > 0 && html`<p class="faults" role="status">${faults.join('  ·  ')}</p>`;
}
