// The numbers that a state is made of: what they are called in addresses, how a key press moves them, how far sliders go.
import { query } from '../api.js';

/** name: in the address; key: in the server's questions and answers; low and high: of the slider. */
export const INPUTS = [
  { name: 'tws', key: 'tws_kn', step: 1, low: 2, high: 35, decimals: 1, first: 14 },
  { name: 'twa', key: 'twa_deg', step: 1, low: 20, high: 180, decimals: 1, first: 60 },
  { name: 'speed', key: 'boat_speed_kn', step: 1, low: 0, high: 50, decimals: 1, first: 24 },
  { name: 'aws', key: 'aws_kn', step: 1, low: 2, high: 70, decimals: 1, first: 32 },
  { name: 'awa', key: 'awa_deg', step: 1, low: 0, high: 180, decimals: 1, first: 20 },
  { name: 'camber', key: 'camber_deg', step: 0.5, low: -10, high: Infinity, decimals: 1, first: 18 },
  { name: 'twist', key: 'twist_deg', step: 0.5, low: -5, high: Infinity, decimals: 1, first: 16 },
  { name: 'mid', key: 'twist_mid_ratio', step: 0.02, low: 0.2, high: 0.8, decimals: 2, first: 0.5 },
  { name: 'sheet', key: 'sheet_deg', step: 0.5, low: -10, high: Infinity, decimals: 1, first: 8 },
  { name: 'leeway', key: 'leeway_deg', step: 0.5, low: -2, high: 8, decimals: 1, first: 3 },
  { name: 'heel', key: 'heel_deg', step: 0.5, low: -10, high: 10, decimals: 1, first: 2 },
  { name: 'ride', key: 'ride_height_m', step: 0.05, low: 0, high: 2, decimals: 2, first: 1 },
  { name: 'pitch', key: 'pitch_deg', step: 0.5, low: -3, high: 5, decimals: 1, first: 0 },
];

export const TRUE_WIND = ['tws', 'twa', 'speed'];
export const APPARENT_WIND = ['aws', 'awa'];
export const TRIM = ['camber', 'twist', 'mid', 'sheet'];
/** How the boat lies; leeway turns the true wind only. */
export const LIES = ['leeway', 'heel', 'ride', 'pitch'];

const BY_NAME = Object.fromEntries(INPUTS.map((one) => [one.name, one]));
export const inputOf = (name) => BY_NAME[name];

/** Names that count for the wind that is given. */
const countsFor = (apparent) => (name) => !(apparent ? [...TRUE_WIND, 'leeway'] : APPARENT_WIND).includes(name);

export const namesOf = (state) => INPUTS.map((one) => one.name).filter(countsFor(state.apparent));

/** The state that the address holds; what it leaves out stands at its first value. */
export function stateOf(choice) {
  const state = { apparent: choice.wind === 'apparent' };
  for (const { name, first } of INPUTS) {
    const given = Number.parseFloat(choice[name]);
    state[name] = Number.isFinite(given) ? given : first;
  }
  return state;
}

/** The address of a state. */
export function choiceOf(state) {
  const counts = countsFor(state.apparent);
  const choice = { wind: state.apparent ? 'apparent' : null };
  for (const { name } of INPUTS) choice[name] = counts(name) ? tidy(state[name]) : null;
  return choice;
}

/** Where Explore stands at a state that is given by the server's keys. */
export const addressOf = (boat, wing, values) => `/explore${query({ boat, wing, ...choiceOf(withKeys(stateOf({}), values)) })}`;

/** What the server is asked. */
export function questionOf(state) {
  return Object.fromEntries(namesOf(state).map((name) => [inputOf(name).key, tidy(state[name])]));
}

/** Without the tail that adding tenths leaves. */
export const tidy = (value) => Number(value.toFixed(4));

/** The state that has the server's inputs, by key. */
export function withKeys(state, values) {
  const next = { ...state };
  for (const { name, key } of INPUTS) if (key in values) next[name] = values[key];
  return next;
}
