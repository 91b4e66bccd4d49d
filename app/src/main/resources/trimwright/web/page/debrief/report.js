// The debrief of a session, asked for until it is made.
import { useEffect, useState } from '../dom.js';
import { getWork, query } from '../api.js';

const ASK_AGAIN_MILLIS = 300;

/** @returns {{report: any, work: {done: number, total: number}|null, fault: Error|null}} */
export function useReport(session, reference, calibrated) {
  const [state, setState] = useState({ report: null, work: null, fault: null });
  useEffect(() => {
    const abort = new AbortController();
    let timer = 0;
    setState({ report: null, work: null, fault: null });
    const ask = async () => {
      try {
        const answer = await getWork(`/api/sessions/${encodeURIComponent(session)}/debrief${query(reference)}`, { signal: abort.signal });
        if (abort.signal.aborted) return;
        if (answer.ready) setState({ report: answer.body, work: null, fault: null });
        else {
          setState({ report: null, work: answer.body, fault: null });
          timer = setTimeout(ask, ASK_AGAIN_MILLIS);
        }
      } catch (fault) {
        if (!abort.signal.aborted) setState({ report: null, work: null, fault });
      }
    };
    ask();
    return () => {
      clearTimeout(timer);
      abort.abort();
    };
  }, [session, reference.boat, reference.wing, reference.learned, calibrated]);
  return state;
}
