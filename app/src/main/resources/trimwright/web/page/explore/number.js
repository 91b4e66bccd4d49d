// A number of the server's wing document, written where it stands in it; and words with their meaning.
import { html } from '../dom.js';
import { fixed } from '../format.js';
import { t } from '../text.js';

/** The value at a path of the document: strips.20.alpha_deg. */
export const valueAt = (document, path) => path.split('.').reduce((part, name) => part?.[name], document);

/** over: what it is divided by, 1000 for kilo. Signed numbers show a plus. */
export function Num({ wing, path, decimals = 1, over = 1, signed = false }) {
  const value = valueAt(wing, path) / over;
  const text = fixed(value, decimals);
  return html`<span class="number" data-path=${path} data-over=${over} data-decimals=${decimals}>${signed && value > 0 && !/^0(\.0*)?$/.test(text) ? `+${text}` : text}</span>`;
}

/** A word that says what it means when it is pointed at or has the focus. */
export function Term({ name, children }) {
  const id = `tip-${name}`;
  return html`
    <span class="term" tabindex="0" aria-describedby=${id}>${children ?? t(`web.number.${name}`)}
      <span class="tip" role="tooltip" id=${id}>${t(`web.explore.tip.${name}`)}</span></span>`;
}
