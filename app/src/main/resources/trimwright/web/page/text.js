// All shown text comes from the program's one bundle; pages know keys only.
import { getJson } from './api.js';

let bundle = {};

export async function loadText() {
  bundle = await getJson('/api/text');
}

/**
 * The text of that key with {name} parts filled in.
 * @param {string} key
 * @param {Record<string, string|number>} [parts]
 */
export function t(key, parts = {}) {
  const text = bundle[key];
  if (text === undefined) {
    console.error(`no text for ${key}`);
    return key;
  }
  return text.replace(/\{(\w+)\}/g, (whole, name) => (name in parts ? String(parts[name]) : whole));
}

/** The text of a key if the bundle has it, else the fallback: for words that come from data. */
export function wordFor(key, fallback) {
  return bundle[key] ?? fallback;
}
