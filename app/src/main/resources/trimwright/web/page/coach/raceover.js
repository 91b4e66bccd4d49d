// A race is over: what came so far becomes a session, recording goes on, and its six lines are a click away.
import { html, useState } from '../dom.js';
import { query, send } from '../api.js';
import { follow } from '../address.js';
import { t } from '../text.js';

export function RaceOver({ own }) {
  const [over, setOver] = useState(null);
  const [said, setSaid] = useState('');
  const [busy, setBusy] = useState(false);
  const end = () => {
    setBusy(true);
    setSaid('');
    send('/api/live/race-over', {})
      .then(
        setOver,
        (fault) => setSaid(fault.message),
      )
      .then(() => setBusy(false));
  };
  return html`<button disabled=${busy} title=${t('web.coach.race_over.why')} onClick=${end}>${t('web.coach.race_over')}</button>
    <span role="status">${busy ? t('web.coach.race_over.busy') : said}
      ${over && !busy && html`<a href=${`/quick/${encodeURIComponent(over.session)}${query({ of: own, boat: over.boat, wing: over.wing })}`} onClick=${follow}>${t('web.coach.race_over.open', { session: over.session })}</a>`}</span>`;
}
