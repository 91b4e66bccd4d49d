// The boats of a session: how each is drawn, which one is looked at, which are shown beside it.
import { createStore } from '../store.js';

// Okabe and Ito's colours; dash and letter say the same again.
const COLOURS = ['#0072b2', '#d55e00', '#009e73', '#cc79a7', '#56b4e9', '#e69f00', '#16202b'];
const DASHES = [[], [7, 3], [2, 2.5], [9, 3, 2, 3], [12, 3], [4, 2, 1, 2]];

/** @param {string[]} names in the order of the session */
export function createFleet(names) {
  const boats = names.map((name, i) => ({
    name,
    letter: letterOf(names, i),
    colour: COLOURS[i % COLOURS.length],
    dash: DASHES[i % DASHES.length],
  }));
  const store = createStore({ shown: names });
  return {
    ...store,
    boats,
    of: (name) => boats.find((boat) => boat.name === name),
    turn(name) {
      const { shown } = store.get();
      store.set({ shown: shown.includes(name) ? shown.filter((one) => one !== name) : [...shown, name] });
    },
    /** The boat that is looked at and those shown beside it, it last so that it is drawn on top. */
    drawn: (focus) => [...boats.filter((boat) => boat.name !== focus && store.get().shown.includes(boat.name)), boats.find((boat) => boat.name === focus)],
  };
}

/** The beginning of the name that no other boat's name shares, three letters at most, else its number. */
function letterOf(names, i) {
  for (let length = 1; length <= Math.min(3, names[i].length); length++) {
    const begin = names[i].slice(0, length).toLowerCase();
    if (names.every((other, k) => k === i || other.slice(0, length).toLowerCase() !== begin)) {
      return begin[0].toUpperCase() + begin.slice(1);
    }
  }
  return String(i + 1);
}
