// How many pixels of this screen are a millimetre: set once against a card of known width.
import { createStore } from '../store.js';

const KEPT = 'trimwright.live.mm';
/** ISO/IEC 7810, format ID-1: bank cards, identity cards. */
export const CARD_MM = 85.6;
/** CSS takes an inch for 96 px; a guess until the ruler is set. */
const GUESS = 96 / 25.4;

const stored = Number(localStorage.getItem(KEPT));
export const size = createStore({ pixels: stored > 0 ? stored : GUESS, set: stored > 0 });

export function setPixels(pixels) {
  const kept = Math.min(20, Math.max(1, pixels));
  localStorage.setItem(KEPT, String(kept));
  size.set({ pixels: kept, set: true });
}
