// The server's answers. Every number on a page comes through here.
import { wordFor } from './text.js';

/** A request that the server refused, with its one sentence. */
export class Refusal extends Error {
  constructor(status, sentence) {
    super(sentence);
    this.status = status;
  }
}

async function ask(path, options) {
  let answer;
  try {
    answer = await fetch(path, options);
  } catch (cause) {
    if (cause.name === 'AbortError') throw cause;
    throw new Refusal(0, wordFor('web.refuse.silent', 'The workbench does not answer.'));
  }
  if (!answer.ok) {
    const fault = await answer.json().catch(() => ({ message: `${answer.status} ${answer.statusText}` }));
    throw new Refusal(answer.status, fault.message);
  }
  return answer;
}

/** @returns {Promise<any>} */
export async function getJson(path, options) {
  return (await ask(path, options)).json();
}

/** Sends something to be kept. */
export async function send(path, body) {
  return (await ask(path, { method: 'POST', headers: { 'Content-Type': 'application/json' }, body: JSON.stringify(body) })).json();
}

/** Takes something away. */
export async function remove(path) {
  return (await ask(path, { method: 'DELETE' })).json();
}

/** As getJson, with the status: 202 means that the work is still going on. */
export async function getWork(path, options) {
  const answer = await ask(path, options);
  return { ready: answer.status === 200, body: await answer.json() };
}

/**
 * Columns of 64-bit numbers: layout, number of columns, the length of each, then column after column.
 * @returns {Promise<Float64Array[]>}
 */
export async function getColumns(path, options) {
  const numbers = new Float64Array(await (await ask(path, options)).arrayBuffer());
  if (numbers[0] !== 1) throw new Refusal(0, wordFor('web.refuse.layout', 'unknown column layout'));
  const columns = [];
  let at = 2 + numbers[1];
  for (let i = 0; i < numbers[1]; i++) {
    columns.push(numbers.subarray(at, at + numbers[2 + i]));
    at += numbers[2 + i];
  }
  return columns;
}

/** Query string of the given parts; absent ones are left out, lists repeated. */
export function query(parts) {
  const pairs = new URLSearchParams();
  for (const [name, value] of Object.entries(parts)) {
    for (const one of Array.isArray(value) ? value : [value]) {
      if (one !== undefined && one !== null && one !== '') pairs.append(name, one);
    }
  }
  const text = pairs.toString();
  return text ? `?${text}` : '';
}
