// Where the flow about the wing's sections comes from, and how far the making of its tables has come.
import { html, useEffect, useState } from './dom.js';
import { getJson, query } from './api.js';
import { t } from './text.js';

const ASK_AGAIN_MILLIS = 1000;

/** @returns {{section: string, wanted: string, done: number, total: number, reason: string|null}|null} asked again until it is as wanted */
export function useSections(boat, wing) {
  const [said, setSaid] = useState(null);
  useEffect(() => {
    const abort = new AbortController();
    let timer = 0;
    setSaid(null);
    const ask = async () => {
      try {
        const answer = await getJson(`/api/sections${query({ boat: boat.id, wing: wing.id })}`, { signal: abort.signal });
        if (abort.signal.aborted) return;
        setSaid(answer);
        if (answer.section !== answer.wanted && !answer.reason) timer = setTimeout(ask, ASK_AGAIN_MILLIS);
      } catch {
        // What is wrong with the server the page's own questions say.
      }
    };
    ask();
    return () => {
      clearTimeout(timer);
      abort.abort();
    };
  }, [boat.id, wing.id, boat.hash]);
  return said;
}

/** A part of an address that changes when tables have come, so that it is asked again. */
export const sectionPart = (said) => (said?.section === 'computed' ? 'computed' : null);

/** made: the sections that the shown numbers were made with. */
export function SectionsNote({ said, made }) {
  if (!made) return null;
  const making = said && said.section !== said.wanted;
  return html`
    <p class="quiet sections-source" role="status" data-section=${made}>${t(`web.sections.${made}`)}
      ${making && said.reason && ` ${t('web.sections.not', { reason: said.reason })}`}
      ${making && !said.reason && html` <progress value=${said.done} max=${said.total} aria-label=${t('web.sections.making_label')} />${' '}
        ${t('web.sections.making', { done: said.done, total: said.total })}`}</p>`;
}
