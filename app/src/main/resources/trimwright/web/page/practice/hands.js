// What hands and feet do: keys, buttons on the screen, wheel, game pad or pedals. Every key can be bound anew.
const KEPT = 'trimwright.practice.keys';

/** Acts and the keys that they begin with. */
export const ACTS = {
  haul: 'ArrowUp',
  ease: 'ArrowDown',
  deepen: 'KeyD',
  flatten: 'KeyF',
  more_twist: 'KeyT',
  less_twist: 'KeyG',
  invert: 'Space',
};

/** Which part of the wing an act is of. */
export const PART = { haul: 'sheet', ease: 'sheet', deepen: 'camber', flatten: 'camber', more_twist: 'twist', less_twist: 'twist', invert: 'inversion' };

/** A wheel's notch works a control for so long (ms). */
const NOTCH = 140;
/** Throw of a stick or pedal that counts as none. */
const IDLE = 0.12;
/** Axes of a standard game pad: sticks up and down; its first button. */
const PAD = { sheet: 1, camber: 3, less_twist: 6, more_twist: 7, invert: 0 };

export function createHands() {
  const held = new Set();
  const notches = new Map();
  let inversions = 0;
  let padInverts = false;
  let pad = { sheet: 0, camber: 0, twist: 0 };
  let keys = { ...ACTS, ...JSON.parse(localStorage.getItem(KEPT) ?? '{}') };
  const listeners = new Set();
  const changed = () => listeners.forEach((listener) => listener());
  const on = (act) => held.has(act) || (notches.get(act) ?? 0) > performance.now();
  const both = (less, more, analog) => Math.max(-1, Math.min(1, (on(more) ? 1 : 0) - (on(less) ? 1 : 0) + analog));

  return {
    keys: () => keys,
    bind(act, code) {
      keys = { ...keys, [act]: code };
      localStorage.setItem(KEPT, JSON.stringify(keys));
      changed();
    },
    unbind() {
      keys = { ...ACTS };
      localStorage.removeItem(KEPT);
      changed();
    },
    actOf: (code) => Object.keys(keys).find((act) => keys[act] === code) ?? null,
    press(act) {
      if (held.has(act)) return;
      held.add(act);
      if (act === 'invert') inversions++;
      changed();
    },
    release(act) {
      held.delete(act);
      changed();
    },
    releaseAll() {
      held.clear();
      changed();
    },
    notch(act) {
      notches.set(act, performance.now() + NOTCH);
      changed();
      setTimeout(changed, NOTCH + 5);
    },
    isOn: on,
    reset() {
      held.clear();
      inversions = 0;
    },
    /** Reads the first game pad or set of pedals, if there is one. */
    readPad() {
      const found = [...(navigator.getGamepads?.() ?? [])].find(Boolean);
      if (!found) return;
      const axis = (i) => (Math.abs(found.axes[i] ?? 0) > IDLE ? Math.round(20 * found.axes[i]) / 20 : 0);
      const button = (i) => found.buttons[i]?.value ?? 0;
      const next = { sheet: -axis(PAD.sheet), camber: -axis(PAD.camber), twist: button(PAD.more_twist) - button(PAD.less_twist) };
      const inverts = button(PAD.invert) > 0.5;
      if (inverts && !padInverts) inversions++;
      const moved = next.sheet !== pad.sheet || next.camber !== pad.camber || next.twist !== pad.twist || inverts !== padInverts;
      padInverts = inverts;
      pad = next;
      if (moved) changed();
    },
    /** As the server wants it. A stick pulled back hauls. */
    now: () => ({
      sheet: both('haul', 'ease', pad.sheet),
      camber: both('flatten', 'deepen', pad.camber),
      twist: both('less_twist', 'more_twist', pad.twist),
      inversions,
    }),
    listen(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

/** A key's name as it stands on a keyboard. */
export function keyName(code) {
  return code.replace(/^Key|^Digit/, '').replace('ArrowUp', '\u2191').replace('ArrowDown', '\u2193').replace('ArrowLeft', '\u2190').replace('ArrowRight', '\u2192');
}
