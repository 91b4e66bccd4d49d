// What stretch of time is looked at, and where the cursor is. Everything drawn follows this one store.
import { createStore } from '../store.js';

const SHORTEST = 4;

/**
 * A view of a session from start to end, in seconds since 1970.
 * @param {any} clock how its times of day are written
 */
export function createView(start, end, clock) {
  const whole = { from: start, to: Math.max(end, start + SHORTEST) };
  const store = createStore({ ...whole, cursor: null, piece: null, lit: null });

  /** Shows a stretch, kept inside the session and no shorter than can be read. */
  function show(from, to) {
    const length = Math.min(whole.to - whole.from, Math.max(SHORTEST, to - from));
    const middle = (from + to) / 2;
    const first = Math.max(whole.from, Math.min(whole.to - length, middle - length / 2));
    store.set({ from: first, to: first + length, piece: null });
  }

  return {
    ...store,
    whole,
    clock,
    show,
    all: () => store.set({ ...whole, piece: null }),
    /** Moves by a share of what is shown. */
    pan(share) {
      const { from, to } = store.get();
      show(from + share * (to - from), to + share * (to - from));
    },
    /** Shows that many times as much, the given instant staying where it is. */
    zoom(factor, about) {
      const { from, to } = store.get();
      const held = about ?? (from + to) / 2;
      const length = Math.max(SHORTEST, (to - from) * factor);
      const first = held - ((held - from) / (to - from)) * length;
      show(first, first + length);
    },
    /** Shows a piece of the day with some of what was before and after it. */
    showPiece(piece) {
      const room = Math.max(8, 0.4 * (piece.to - piece.from));
      show(piece.from - room, piece.to + room);
      store.set({ piece });
    },
    /** Moves the window so that an instant is in its middle. */
    centre(instant) {
      const { from, to } = store.get();
      show(instant - (to - from) / 2, instant + (to - from) / 2);
    },
    point: (cursor) => store.set({ cursor }),
    /** Marks stretches of time wherever time is drawn, or none: {title, spans: {from, to, loss}[]}. */
    light: (lit) => store.set({ lit }),
  };
}
