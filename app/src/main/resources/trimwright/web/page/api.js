// The server's answers. Every number on a page comes through here.

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
    throw new Refusal(0, 'The workbench does not answer. Maybe it was stopped in its terminal.');
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

/** As getJson, with the status: 202 means that the work is still going on. */
export async function getWork(path, options) {
  const answer = await ask(path, options);
  return { ready: answer.status === 200, body: await answer.json() };
}

export async function post(path) {
  return (await ask(path, { method: 'POST' })).json();
}

/**
 * Columns of 64-bit numbers: a head of four (layout, columns, rows, step in seconds), then column after column.
 * @returns {Promise<{rows: number, step: number, columns: Float64Array[]}>}
 */
export async function getColumns(path, options) {
  const buffer = await (await ask(path, options)).arrayBuffer();
  const head = new Float64Array(buffer, 0, 4);
  if (head[0] !== 1) throw new Refusal(0, `This page does not know chart layout ${head[0]}.`);
  const columns = [];
  for (let i = 0; i < head[1]; i++) {
    columns.push(new Float64Array(buffer, 8 * (4 + i * head[2]), head[2]));
  }
  return { rows: head[2], step: head[3], columns };
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
