// Time of day: that on board with its offset from UTC, or UTC where the reader turns to it.
import { createStore } from './store.js';
import { t } from './text.js';

const KEPT = 'trimwright.clock';
const HOUR = 3600;

/**
 * The clock of a session.
 * @param {{utc_offset_s: number, utc_offset_from: string}} session
 */
export function createClock(session) {
  const { utc_offset_s: offset, utc_offset_from: from } = session;
  const store = createStore({ utc: offset === 0 || localStorage.getItem(KEPT) === 'utc' });
  return {
    ...store,
    /** Whether there is another time than UTC. */
    hasLocal: offset !== 0,
    /** Seconds to add to UTC for what is shown. */
    offset: () => (store.get().utc ? 0 : offset),
    timeOfDay: (at) => timeOfDay(at, store.get().utc ? 0 : offset),
    /** The name of the time that is shown, and how it is known. */
    name: () => (store.get().utc ? t('web.clock.utc') : offsetName(offset)),
    how: () => t(`web.clock.from.${from}`),
    turn() {
      const utc = !store.get().utc;
      localStorage.setItem(KEPT, utc ? 'utc' : 'local');
      store.set({ utc });
    },
  };
}

const two = (n) => String(n).padStart(2, '0');

/** Seconds since 1970 as time of day, at the given offset from UTC in seconds. */
export function timeOfDay(seconds, offset = 0) {
  const date = new Date((seconds + offset) * 1000);
  return `${two(date.getUTCHours())}:${two(date.getUTCMinutes())}:${two(date.getUTCSeconds())}`;
}

/** Seconds since 1970 as a date. */
export function day(seconds, offset = 0) {
  return new Date((seconds + offset) * 1000).toISOString().slice(0, 10);
}

/** UTC, UTC+2, UTC-3:30, with a true minus sign. */
export function offsetName(offset) {
  const utc = t('web.clock.utc');
  if (!offset) return utc;
  const minutes = Math.round((Math.abs(offset) % HOUR) / 60);
  return `${utc}${offset < 0 ? '\u2212' : '+'}${Math.floor(Math.abs(offset) / HOUR)}${minutes ? `:${two(minutes)}` : ''}`;
}

/** Seconds since 1970 of a time as documents write it. */
export const secondsOf = (utc) => Date.parse(utc) / 1000;
