// How values of a channel are written: decimals, side, compass.
import { fixed } from '../format.js';
import { t } from '../text.js';

const DECIMALS = { kn: 1, deg: 1, m: 2, n: 0, deg_c: 1, hpa: 0 };

/** @param {{unit: string, turn: string}} channel */
export function written(channel, value) {
  if (value === null || !Number.isFinite(value)) return '\u2013';
  if (channel.turn === 'compass') return `${String(Math.round(compass(value)) % 360).padStart(3, '0')}\u00b0`;
  if (channel.turn === 'signed') return sided(value, 0);
  const text = fixed(value, DECIMALS[channel.unit] ?? 3);
  return channel.unit === 'deg' ? `${text}\u00b0` : text;
}

/** As a tick of an axis. */
export function tick(channel, value) {
  if (channel.turn === 'compass') return `${Math.round(compass(value)) % 360}\u00b0`;
  if (channel.turn === 'signed') return sided(value, 0);
  return Math.abs(value) >= 10000 ? `${fixed(value / 1000, 0)}k` : String(Number(value.toFixed(6))).replace('-', '\u2212');
}

/** Port and starboard by letter. */
function sided(value, decimals) {
  const angle = compass(value + 180) - 180;
  const side = angle === 0 || Math.abs(angle) === 180 ? '' : t(angle < 0 ? 'web.side.port' : 'web.side.starboard');
  return `${fixed(Math.abs(angle), decimals)}\u00b0${side}`;
}

const compass = (value) => ((value % 360) + 360) % 360;

export const unitOf = (channel) => (channel.unit && channel.unit !== 'deg' ? t(`web.unit_of.${channel.unit}`) : '');
