// Which key does what, and how to change it.
import { html, useEffect, useLayoutEffect, useState } from '../dom.js';
import { t } from '../text.js';
import { ACTS, PART, keyName } from './hands.js';

export function Bindings({ hands, mine }) {
  const [asking, setAsking] = useState(null);
  const [, redraw] = useState(0);
  useEffect(() => hands.listen(() => redraw((n) => n + 1)), [hands]);
  // Before the picture: the next key may come sooner than that.
  useLayoutEffect(() => {
    if (!asking) return undefined;
    const take = (event) => {
      event.preventDefault();
      event.stopPropagation();
      if (event.code !== 'Escape') hands.bind(asking, event.code);
      setAsking(null);
    };
    window.addEventListener('keydown', take, true);
    return () => window.removeEventListener('keydown', take, true);
  }, [asking]);
  const keys = hands.keys();
  return html`
    <section class="panel bindings">
      <h2>${t('web.practice.keys')}</h2>
      <dl>${Object.keys(ACTS).map((act) => html`
        <div class=${mine.includes(PART[act]) ? '' : 'others'}><dt>${t(`web.practice.act.${act}`)}</dt>
          <dd><button class="key" aria-pressed=${hands.isOn(act) ? 'true' : 'false'} onClick=${() => setAsking(act)}>${asking === act ? t('web.practice.press') : keyName(keys[act])}</button></dd></div>`)}
      </dl>
      <p class="quiet">${t('web.practice.keys_note')} <button class="plain" onClick=${() => hands.unbind()}>${t('web.practice.keys_first')}</button></p>
    </section>`;
}
