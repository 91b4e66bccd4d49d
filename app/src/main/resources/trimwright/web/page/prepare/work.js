// An answer that takes work: asked for again until it is done.
import { useEffect, useState } from '../dom.js';
import { getWork } from '../api.js';

const ASK_AGAIN_MILLIS = 400;

/**
 * @returns {{value: any, fault: Error|null, work: {done: number, total: number}|null}} value is null while the work goes on; nothing is
 * asked while path is null
 */
export function useWork(path, parts) {
  const [answer, setAnswer] = useState({ value: null, fault: null, work: null });
  useEffect(() => {
    const abort = new AbortController();
    let timer = 0;
    setAnswer({ value: null, fault: null, work: null });
    const ask = async () => {
      try {
        const { ready, body } = await getWork(path, { signal: abort.signal });
        if (abort.signal.aborted) return;
        setAnswer(ready ? { value: body, fault: null, work: null } : { value: null, fault: null, work: body });
        if (!ready) timer = setTimeout(ask, ASK_AGAIN_MILLIS);
      } catch (fault) {
        if (!abort.signal.aborted) setAnswer({ value: null, fault, work: null });
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
