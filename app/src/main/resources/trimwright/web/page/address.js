// Where the page stands is in the address line, so it can be marked, shared and gone back to.
import { createStore, useStore } from './store.js';
import { query } from './api.js';

const store = createStore(read());
window.addEventListener('popstate', () => store.set(read()));

function read() {
  const parts = location.pathname.split('/').filter(Boolean).map(decodeURIComponent);
  return { place: parts[0] ?? 'prepare', item: parts[1] ?? null, choice: Object.fromEntries(new URLSearchParams(location.search)) };
}

export const useAddress = () => useStore(store);

/** Goes to another place; back returns. */
export function go(path) {
  history.pushState(null, '', path);
  store.set(read());
}

/** Changes the choice at this place without a step in the history. */
export function choose(change) {
  const { choice } = store.get();
  history.replaceState(null, '', location.pathname + query({ ...choice, ...change }));
  store.set(read());
}

/** For links: a plain click stays in the page, any other click is the browser's. */
export function follow(event) {
  if (event.button === 0 && !event.metaKey && !event.ctrlKey && !event.shiftKey && !event.altKey) {
    event.preventDefault();
    go(event.currentTarget.getAttribute('href'));
  }
}
