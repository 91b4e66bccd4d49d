// The target book of a boat and wing: asked for until it is computed. When a boat file was changed, the book before the
// change is kept, so that its lanes can be shown next to the new ones.
import { useEffect, useRef, useState } from '../dom.js';
import { getWork, query } from '../api.js';

const ASK_AGAIN_MILLIS = 250;

/**
 * @param {string|null} section where the sections come from now: a change asks again
 * @param {string|undefined} turbulence of the day, per cent; the server's where nothing is said
 * @returns {{book: any, earlier: any, work: {done: number, total: number}|null, fault: Error|null, forgetEarlier: () => void}}
 */
export function useBook(boat, wing, section, turbulence) {
  const [state, setState] = useState({ book: null, earlier: null, work: null, fault: null });
  const shown = useRef(null);
  useEffect(() => {
    const abort = new AbortController();
    let timer = 0;
    const same = shown.current?.boat === boat.id && shown.current?.wing === wing.id;
    if (!same) setState({ book: null, earlier: null, work: null, fault: null });
    const ask = async () => {
      try {
        const answer = await getWork(`/api/targets${query({ boat: boat.id, wing: wing.id, turbulence_percent: turbulence })}`, { signal: abort.signal });
        if (abort.signal.aborted) return;
        if (!answer.ready) {
          setState((old) => ({ ...old, work: answer.body, fault: null }));
          timer = setTimeout(ask, ASK_AGAIN_MILLIS);
          return;
        }
        shown.current = { boat: boat.id, wing: wing.id };
        setState((old) => ({
          book: answer.body,
          earlier: old.book && old.book.model.boat_hash !== answer.body.model.boat_hash ? old.book : old.earlier,
          work: null,
          fault: null,
        }));
      } catch (fault) {
        if (!abort.signal.aborted) setState((old) => ({ ...old, work: null, fault }));
      }
    };
    ask();
    return () => {
      clearTimeout(timer);
      abort.abort();
    };
  }, [boat.id, wing.id, boat.hash, section, turbulence]);
  return { ...state, forgetEarlier: () => setState((old) => ({ ...old, earlier: null })) };
}
