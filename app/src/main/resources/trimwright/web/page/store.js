// One small store: a frozen state, a way to change it, and a hook that redraws on change.
import { useEffect, useState } from './dom.js';

/**
 * @template T
 * @param {T} initial
 * @returns {{get: () => T, set: (change: Partial<T>) => void, subscribe: (listener: () => void) => () => void}}
 */
export function createStore(initial) {
  let state = Object.freeze({ ...initial });
  const listeners = new Set();
  return {
    get: () => state,
    set(change) {
      state = Object.freeze({ ...state, ...change });
      listeners.forEach((listener) => listener());
    },
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

/** The store's state; the component is drawn again when it changes. */
export function useStore(store) {
  const [state, setState] = useState(store.get());
  useEffect(() => {
    setState(store.get());
    return store.subscribe(() => setState(store.get()));
  }, [store]);
  return state;
}
