// An answer that takes work: asked for again until it is done.
import { useEffect, useState } from '../dom.js';
import { getWork } from '../api.js';

const ASK_AGAIN_MILLIS = 400;

/** @returns {{value: any, fault: Error|null}} value is null while the work goes on; nothing is asked while path is null */
export function useWork(path, parts) {
  const [answer, setAnswer] = useState({ value: null, fault: null });
  useEffect(() => {
    const abort = new AbortController();
    let timer = 0;
    setAnswer({ value: null, fault: null });
    const ask = async () => {
      try {
        const { ready, body } = await getWork(path, { signal: abort.signal });
        if (abort.signal.aborted) return;
        if (ready) setAnswer({ value: body, fault: null });
        else timer = setTimeout(ask, ASK_AGAIN_MILLIS);
      } catch (fault) {
        if (!abort.signal.aborted) setAnswer({ value: null, fault });
      }
    };
    if (path) ask();
    return () => {
      clearTimeout(timer);
      abort.abort();
    };
  }, [path, ...parts]);
  return answer;
}
