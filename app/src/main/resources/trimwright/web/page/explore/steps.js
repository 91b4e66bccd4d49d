// The steps of a hand as a hook. What a hand does is asked for at once and shown with the answer, or alone if that is slow: a
// slider and what follows from it are then mostly one picture, and no frame is spent on the slider while the answer waits.
import { useCallback, useEffect, useMemo, useRef, useState } from '../dom.js';
import { begin, change, mark, redo, undo } from './history.js';

/** The hand is at rest after this long (ms): chosen, longer than between two steps of a wheel. */
const REST_MILLIS = 350;
/** A slider waits for its answer so long (ms): chosen, two frames, which no hand feels. */
const ALONE_MILLIS = 33;

/**
 * @param {() => any} first the state to begin with
 * @param {{current: (state: any) => void}} ask told each state that the hand makes
 */
export function useSteps(first, ask) {
  const [steps, setSteps] = useState(() => begin(first()));
  const hand = useRef({ pending: null, alone: 0, timer: 0, now: null });
  hand.current.now = steps.now;

  const flush = useCallback(() => {
    const { pending, alone } = hand.current;
    if (!pending) return;
    clearTimeout(alone);
    hand.current.pending = null;
    hand.current.now = pending;
    setSteps((old) => change(old, pending));
  }, []);
  const act = useCallback((make) => {
    clearTimeout(hand.current.timer);
    flush();
    setSteps(make);
  }, []);
  const acts = useMemo(() => ({
    flush,
    rest: () => act(mark),
    go: (next) => act((old) => mark(change(mark(old), next))),
    undo: () => act(undo),
    redo: () => act(redo),
    show(make) {
      const next = make(hand.current.pending ?? hand.current.now);
      if (!hand.current.pending) hand.current.alone = setTimeout(flush, ALONE_MILLIS);
      hand.current.pending = next;
      ask.current(next);
      clearTimeout(hand.current.timer);
      hand.current.timer = setTimeout(acts.rest, REST_MILLIS);
    },
  }), []);
  useEffect(() => () => {
    clearTimeout(hand.current.timer);
    clearTimeout(hand.current.alone);
  }, []);
  return [steps, acts];
}
