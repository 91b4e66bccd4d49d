// The server's live state (live/1): whole first, then what changed. Connects again by itself.
import { createStore } from '../store.js';

const SILENCE = 2000;
const RETRY = 1000;

/** A store with {state, time, heard}; heard is false while nothing comes. */
export function createStream() {
  const store = createStore({ state: null, time: '', heard: false });
  let socket = null;
  let watch = 0;
  let retry = 0;
  let ended = false;

  const silent = () => store.set({ heard: false });
  const connect = () => {
    socket = new WebSocket(`${location.origin.replace(/^http/, 'ws')}/ws/live`);
    socket.onmessage = (event) => {
      const frame = JSON.parse(event.data);
      const before = store.get().state;
      if (!frame.state && !before) return;
      clearTimeout(watch);
      watch = setTimeout(silent, SILENCE);
      const state = frame.state ?? { ...before, ...frame.changed };
      store.set({ state, time: frame.time_utc, heard: true });
    };
    socket.onclose = () => {
      silent();
      store.set({ state: null });
      if (!ended) retry = setTimeout(connect, RETRY);
    };
  };
  connect();
  return {
    ...store,
    close() {
      ended = true;
      clearTimeout(watch);
      clearTimeout(retry);
      socket.close();
    },
  };
}

/** The values of one boat by their short names. */
export function valuesOf(state, boat) {
  const start = `boat.${boat}.`;
  const values = {};
  for (const [name, value] of Object.entries(state)) {
    if (name.startsWith(start)) values[name.slice(start.length)] = value;
  }
  return values;
}
