// Hooks that more than one place needs.
import { useEffect, useLayoutEffect, useRef, useState } from './dom.js';

/** An answer of the server: {value, fault}; asked again when the parts change, late answers are dropped. */
export function useAnswer(ask, parts) {
  const [answer, setAnswer] = useState({ value: null, fault: null });
  useEffect(() => {
    const abort = new AbortController();
    ask(abort.signal).then(
      (value) => abort.signal.aborted || setAnswer({ value, fault: null }),
      (fault) => abort.signal.aborted || setAnswer({ value: null, fault }),
    );
    return () => abort.abort();
  }, parts);
  return answer;
}

/** Width and height of an element, kept up to date. */
export function useSize() {
  const ref = useRef(null);
  const [size, setSize] = useState({ width: 0, height: 0 });
  useLayoutEffect(() => {
    const measure = () => {
      const box = ref.current.getBoundingClientRect();
      setSize((old) =>
        old.width === Math.floor(box.width) && old.height === Math.floor(box.height)
          ? old
          : { width: Math.floor(box.width), height: Math.floor(box.height) },
      );
    };
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(ref.current);
    return () => watch.disconnect();
  }, []);
  return [ref, size];
}
