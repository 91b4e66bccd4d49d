// Asks the server for the wing in a state: one question on its way at a time, then the newest; those between are skipped.
import { useEffect, useLayoutEffect, useRef, useState } from '../dom.js';
import { getJson, query } from '../api.js';
import { questionOf } from './inputs.js';

/**
 * @param {string|null} section where the sections come from now: a change asks again
 * @param {() => void} before called before an answer is shown
 * @returns {[{wing: any, shape: any, reason: string|null, state: any, count: number, fault: Error|null}, boolean, (state: any) => void]}
 *     the newest answer, whether it is that for this state, and a way to ask for a state before it is shown. Where there is no
 *     flow, wing is null and reason says so
 */
export function useWing(boat, wing, state, strip, section, before) {
  const [answer, setAnswer] = useState({ wing: null, shape: null, reason: null, state: null, path: null, count: 0, fault: null });
  const line = useRef({ busy: false, next: null, asked: null, closed: false });
  line.current.show = (make) => {
    before();
    setAnswer(make);
  };
  useEffect(() => () => { line.current.closed = true; }, []);
  const pathOf = (one) => `/api/explore${query({ boat: boat.id, hash: boat.hash, wing: wing.id, strip, section, ...questionOf(one) })}`;
  const latest = useRef(pathOf);
  latest.current = pathOf;
  const path = pathOf(state);
  useLayoutEffect(() => {
    ask(line.current, { path, state });
  }, [path]);
  const early = useRef((one) => ask(line.current, { path: latest.current(one), state: one }));
  return [answer, answer.path === path, early.current];
}

async function ask(line, question) {
  if (question.path === line.asked) return;
  line.asked = question.path;
  if (line.busy) {
    line.next = question;
    return;
  }
  line.busy = true;
  try {
    const { wing, reason, ...shape } = await getJson(question.path);
    if (!line.closed) line.show((old) => ({ wing: wing ?? null, shape, reason: reason ?? null, ...question, count: old.count + 1, fault: null }));
  } catch (fault) {
    line.asked = null;
    if (!line.closed) line.show((old) => ({ ...old, fault }));
  }
  line.busy = false;
  const { next } = line;
  line.next = null;
  if (next && !line.closed) {
    line.asked = null;
    ask(line, next);
  }
}
