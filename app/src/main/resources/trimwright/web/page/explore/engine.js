// Asks the server for the wing in a state: one question on its way at a time, then the newest; those between are skipped.
import { useEffect, useLayoutEffect, useRef, useState } from '../dom.js';
import { getJson, query } from '../api.js';
import { questionOf } from './inputs.js';

/**
 * @returns {[{wing: any, shape: any, reason: string|null, state: any, fault: Error|null}, boolean]} the newest answer, and
 *     whether it is that for this state. Where there is no flow, wing is null and reason says so
 */
export function useWing(boat, wing, state, strip) {
  const [answer, setAnswer] = useState({ wing: null, shape: null, reason: null, state: null, path: null, fault: null });
  const line = useRef({ busy: false, next: null, closed: false });
  useEffect(() => () => { line.current.closed = true; }, []);
  const path = `/api/explore${query({ boat: boat.id, hash: boat.hash, wing: wing.id, strip, ...questionOf(state) })}`;
  // Before the frame is painted, so that the question is on its way while the slider is drawn.
  useLayoutEffect(() => {
    ask(line.current, { path, state }, setAnswer);
  }, [path]);
  return [answer, answer.path === path];
}

async function ask(line, question, setAnswer) {
  if (line.busy) {
    line.next = question;
    return;
  }
  line.busy = true;
  try {
    const { wing, reason, ...shape } = await getJson(question.path);
    if (!line.closed) setAnswer({ wing: wing ?? null, shape, reason: reason ?? null, ...question, fault: null });
  } catch (fault) {
    if (!line.closed) setAnswer((old) => ({ ...old, fault }));
  }
  line.busy = false;
  const { next } = line;
  line.next = null;
  if (next && !line.closed) ask(line, next, setAnswer);
}
