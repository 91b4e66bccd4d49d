// What stands round every place: name, places, caution.
import { html } from './dom.js';
import { follow } from './address.js';
import { t } from './text.js';

const PLACES = ['prepare', 'explore', 'practice', 'library', 'debrief'];

export function Shell({ place, children }) {
  return html`
    <a class="skip" href="#place">${t('web.shell.skip')}</a>
    <header class="top">
      <a class="name" href="/" onClick=${follow}><img src="/page/mark.svg" alt="" width="22" height="22" />${t('web.shell.name')}</a>
      <nav aria-label=${t('web.shell.places')}>
        ${PLACES.map((one) => html`
          <a href=${`/${one}`} onClick=${follow} aria-current=${one === place ? 'page' : null}>${t(`web.place.${one}`)}</a>`)}
      </nav>
    </header>
    <main id="place" class=${`place ${place}`} tabindex="-1">${children}</main>
    <footer class="caution" role="note">
      <details>
        <summary><b>${t('web.caution.mark')}</b> ${t('web.caution.short')}</summary>
        <p>${t('web.caution.long')}</p>
      </details>
    </footer>`;
}

export function Fault({ fault }) {
  return html`<p class="fault" role="alert">${fault.message}</p>`;
}

export function Waiting({ text }) {
  return html`<p class="waiting" role="status">${text}</p>`;
}
