// The target for the wind that is set: asked for by hand, since the target book may take a while to compute.
import { useEffect, useRef, useState } from '../dom.js';
import { getWork, query } from '../api.js';
import { t, wordFor } from '../text.js';

const ASK_AGAIN_MILLIS = 250;

/**
 * @param {(inputs: Record<string, number>) => void} onFound told the target's inputs by key
 * @returns {{target: Record<string, number>|null, work: {done: number, total: number}|null, said: string[], seek: () => void}}
 *     target: where the wind is still the one it was found for; said: doubts, or why there is none
 */
export function useTarget(boat, wing, state, onFound) {
  const [found, setFound] = useState({ inputs: null, said: [], tws: 0, twa: 0 });
  const [work, setWork] = useState(null);
  const stop = useRef(null);
  const told = useRef(onFound);
  told.current = onFound;
  // The wind may be moved while the book is computed: the one that counts is the one that is set when it is there.
  const wind = useRef(state);
  wind.current = state;
  useEffect(() => () => stop.current?.(), []);
  const seek = () => {
    const abort = new AbortController();
    let timer = 0;
    stop.current = () => { clearTimeout(timer); abort.abort(); };
    const ask = async () => {
      const { tws, twa } = wind.current;
      try {
        const answer = await getWork(`/api/explore/target${query({ boat: boat.id, wing: wing.id, tws_kn: tws, twa_deg: twa })}`, { signal: abort.signal });
        if (abort.signal.aborted) return;
        if (!answer.ready) {
          setWork(answer.body);
          timer = setTimeout(ask, ASK_AGAIN_MILLIS);
          return;
        }
        const { inputs = null, reason, caveats } = answer.body;
        setWork(null);
        setFound({ inputs, said: [...(reason ? [reason] : []), ...caveats.map((key) => wordFor(`web.caveat.${key}`, key))], tws, twa });
        if (inputs) told.current(inputs);
      } catch (fault) {
        if (abort.signal.aborted) return;
        setWork(null);
        setFound({ inputs: null, said: [fault.message ?? t('web.refuse.silent')], tws, twa });
      }
    };
    setWork({ done: 0, total: 1 });
    ask();
  };
  const here = !state.apparent && state.tws === found.tws && state.twa === found.twa;
  return { target: here ? found.inputs : null, work, said: here ? found.said : [], seek };
}
