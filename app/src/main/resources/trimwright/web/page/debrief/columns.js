// The chart's numbers: asked for a little more than is shown, so that moving does not wait for the server.
import { useEffect, useRef, useState } from '../dom.js';
import { getColumns, query } from '../api.js';
import { useStore } from '../store.js';

const AROUND = 0.6;
const WAIT_MILLIS = 60;
/** Room for one mark of a doubtful sample (px). */
const MARK_WIDTH = 9;

/**
 * Columns of the given channels for what the view shows, and which samples are left out of them.
 * @returns {{paths: string[], times: Float64Array[], values: Float64Array[], marked: {times: Float64Array, kinds: Float64Array}[]}|null}
 */
export function useColumns(base, reference, paths, view, width) {
  const { from, to } = useStore(view);
  const [data, setData] = useState(null);
  const have = useRef(null);
  const wanted = [reference.boat, reference.wing, reference.learned, ...paths].join('\n');
  useEffect(() => {
    if (!width || !paths.length) return undefined;
    const span = to - from;
    const old = have.current;
    const fits = old && old.wanted === wanted && old.base === base && old.from <= Math.max(from, view.whole.from)
      && old.to >= Math.min(to, view.whole.to) && old.to - old.from < 3.5 * span && old.width >= width;
    if (fits) return undefined;
    const abort = new AbortController();
    const timer = setTimeout(async () => {
      const first = Math.max(view.whole.from, from - AROUND * span);
      const last = Math.min(view.whole.to, to + AROUND * span);
      const buckets = Math.max(50, Math.round((width * (last - first)) / span));
      try {
        const asked = { from: first, to: last, channel: paths };
        const [columns, marked] = await Promise.all([
          getColumns(`${base}/chart${query({ ...reference, ...asked, buckets })}`, { signal: abort.signal }),
          getColumns(`${base}/marked${query({ ...asked, buckets: Math.max(20, Math.round(buckets / MARK_WIDTH)) })}`, { signal: abort.signal }),
        ]);
        have.current = { wanted, base, from: first, to: last, width };
        setData({
          paths,
          times: paths.map((_, i) => columns[2 * i]),
          values: paths.map((_, i) => columns[2 * i + 1]),
          marked: paths.map((_, i) => ({ times: marked[2 * i], kinds: marked[2 * i + 1] })),
        });
      } catch (fault) {
        if (fault.name !== 'AbortError') throw fault;
      }
    }, old ? WAIT_MILLIS : 0);
    return () => {
      clearTimeout(timer);
      abort.abort();
    };
  }, [base, wanted, from, to, width]);
  return data;
}

/** The value at an instant: that of the last sample before it, or null in a gap. */
export function valueAt(times, values, instant) {
  let low = 0;
  let high = times.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (times[middle] <= instant) low = middle + 1;
    else high = middle;
  }
  return low === 0 || low === times.length || Number.isNaN(values[low - 1]) ? null : values[low - 1];
}
