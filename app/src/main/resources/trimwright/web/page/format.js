// Numbers and times as people read them. Fixed decimals, a true minus sign, no guessing of locale.

const DASH = '\u2013';

/** @param {number|null|undefined} value @param {number} decimals */
export function fixed(value, decimals = 1) {
  if (value === null || value === undefined || !Number.isFinite(value)) return DASH;
  const text = value.toFixed(decimals);
  return /^-0(\.0*)?$/.test(text) ? text.slice(1) : text.replace('-', '\u2212');
}

export const degrees = (value, decimals = 0) => (Number.isFinite(value) ? `${fixed(value, decimals)}\u00b0` : DASH);

export const percent = (ratio, decimals = 0) => (Number.isFinite(ratio) ? `${fixed(100 * ratio, decimals)} %` : DASH);

const two = (n) => String(n).padStart(2, '0');

/** A length of time: 42 s, 3:05, 1:02:03. */
export function duration(seconds) {
  const whole = Math.round(seconds);
  if (whole < 60) return `${whole} s`;
  const hours = Math.floor(whole / 3600);
  const minutes = Math.floor(whole / 60) % 60;
  return hours ? `${hours}:${two(minutes)}:${two(whole % 60)}` : `${minutes}:${two(whole % 60)}`;
}
