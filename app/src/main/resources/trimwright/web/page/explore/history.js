// Steps back and forth. A drag is one step: it changes what is shown at once and is marked when the hand comes to rest.

export const begin = (now) => ({ past: [], base: now, now, future: [] });

/** Shows a state without marking it. */
export const change = (steps, now) => ({ ...steps, now });

/** Marks what is shown as a step, if it differs from the last one. */
export function mark(steps) {
  if (same(steps.base, steps.now)) return steps.base === steps.now ? steps : { ...steps, now: steps.base };
  return { past: [...steps.past.slice(-199), steps.base], base: steps.now, now: steps.now, future: [] };
}

export function undo(steps) {
  const { past, base, future } = mark(steps);
  if (!past.length) return mark(steps);
  const now = past.at(-1);
  return { past: past.slice(0, -1), base: now, now, future: [base, ...future] };
}

export function redo(steps) {
  const { past, base, future } = mark(steps);
  if (!future.length) return mark(steps);
  return { past: [...past, base], base: future[0], now: future[0], future: future.slice(1) };
}

export const canUndo = (steps) => steps.past.length > 0 || !same(steps.base, steps.now);

function same(a, b) {
  return a === b || Object.keys(a).every((name) => a[name] === b[name]);
}
