// What the numbers mean, in words: stalled, slack, past a limit. Words and a sign, never colour alone.
import { html } from '../dom.js';
import { fixed } from '../format.js';
import { t, wordFor } from '../text.js';

/** Beyond this the section's law is a flat plate's. */
const DEEP_DEG = -8;

export function Words({ answer }) {
  return html`<ul class="words" role="status" aria-live="polite">${wordsOf(answer).map(({ sign, text }) => html`
    <li class=${sign}><b aria-hidden="true">${{ good: '\u2713', mind: '!', bad: '\u00d7' }[sign]}</b> ${text}</li>`)}</ul>`;
}

/** @returns {{sign: 'good'|'mind'|'bad', text: string}[]} */
export function wordsOf({ wing, reason }) {
  if (reason) return [{ sign: 'bad', text: reason }];
  if (!wing) return [];
  const words = [...stallWords(wing)];
  if (wing.sheet_slack) words.push({ sign: 'mind', text: t('web.explore.slack') });
  for (const limit of wing.limits) {
    if (limit !== 'stall_margin') words.push({ sign: 'bad', text: wordFor(`web.explore.limit.${limit}`, limit) });
  }
  for (const caveat of wing.caveats) words.push({ sign: 'mind', text: wordFor(`web.caveat.${caveat}`, caveat) });
  if (wing.drive_force_n < 0) words.push({ sign: 'mind', text: t('web.explore.brakes') });
  if (wing.side_force_n < 0) words.push({ sign: 'mind', text: t('web.explore.to_windward') });
  return words;
}

function stallWords(wing) {
  const stalled = stretches(wing.strips, (strip) => strip.stall_margin_deg < 0);
  if (stalled.length) {
    const where = stalled.map(([from, to]) => t('web.explore.from_to', { from: fixed(from), to: fixed(to) })).join(t('web.explore.and'));
    const words = [{ sign: 'bad', text: t('web.explore.stalled', { where }) }];
    if (wing.stall_margin_deg < DEEP_DEG) words.push({ sign: 'mind', text: t('web.explore.deep') });
    return words;
  }
  const where = { margin: fixed(wing.stall_margin_deg), height: fixed(wing.stall_height_above_foot_m) };
  return wing.limits.includes('stall_margin')
    ? [{ sign: 'mind', text: t('web.explore.near_stall', where) }]
    : [{ sign: 'good', text: t('web.explore.attached', where) }];
}

/** Heights from and to of strips in a row that are so. */
function stretches(strips, isSo) {
  const found = [];
  strips.forEach((strip, i) => {
    if (!isSo(strip)) return;
    const low = strip.height_above_foot_m - strip.width_m / 2;
    const high = strip.height_above_foot_m + strip.width_m / 2;
    if (i > 0 && isSo(strips[i - 1])) found.at(-1)[1] = high;
    else found.push([low, high]);
  });
  return found;
}
