// Ashore: what must be right before the lines are let go. Size of the screen, the key, instruments.
import { html } from '../dom.js';
import { useStore } from '../store.js';
import { t } from '../text.js';
import { CARD_MM, setPixels, size } from './size.js';
import { markKey } from './mark.js';

export function Ruler() {
  const { pixels, set } = useStore(size);
  const width = pixels * CARD_MM;
  return html`
    <section class="ruler">
      <p>${t(set ? 'web.live.ruler.set' : 'web.live.ruler.ask')}</p>
      <div class="card" style=${{ width: `${width}px` }}></div>
      <label>${t('web.live.ruler.width')}
        <input type="range" min="1.5" max="12" step="0.02" value=${pixels} onInput=${(event) => setPixels(Number(event.target.value))} /></label>
    </section>`;
}

export function Key({ mark }) {
  return html`
    <section class="key">
      <p>${mark.choosing ? t('web.live.key.press') : t('web.live.key.is', { key: markKey() === ' ' ? t('web.live.key.space') : markKey() })}</p>
      <button onClick=${mark.choose} disabled=${mark.choosing}>${t('web.live.key.choose')}</button>
    </section>`;
}
