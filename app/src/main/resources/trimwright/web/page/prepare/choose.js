// Which wing, foil set and crew for a forecast: the server compares, here it is asked and shown. Up and down the wind, as the command's default.
import { html, useState } from '../dom.js';
import { query } from '../api.js';
import { duration, fixed, percent } from '../format.js';
import { t } from '../text.js';
import { Fault, Waiting } from '../shell.js';
import { useWork } from './work.js';

/** Fields of the question: parameter, its text, what stands there first. */
const FIELDS = [
  ['wind_kn', 'wind', '14'], ['wind_spread_kn', 'spread', '2'], ['shift_deg', 'shift', '5'],
  ['current_kn', 'current', '0'], ['current_to_deg', 'current_to', '0'], ['leg_m', 'leg', '1500'], ['laps', 'laps', '2'], ['crew_mass_kg', 'crew', ''],
];

export function Choose({ boat, tws, turbulence }) {
  const first = Object.fromEntries(FIELDS.map(([name, , value]) => [name, value]));
  const [asked, setAsked] = useState(null);
  const [fields, setFields] = useState({ ...first, wind_kn: tws ? String(tws) : first.wind_kn });
  const { value, fault, work } = useWork(asked && `/api/choose-wing${query({ boat: boat.id, ...asked, turbulence_percent: Number(turbulence.toFixed(3)) })}`, [boat.hash]);
  const submit = (event) => {
    event.preventDefault();
    setAsked({ ...fields });
  };
  return html`
    <section class="panel cards" aria-labelledby="choose-title">
      <h2 id="choose-title">${t('web.choose.title')}</h2>
      <form class="fields" onSubmit=${submit}>
        ${FIELDS.map(([name, key]) => html`
          <label class="field">${t(`web.choose.${key}`)}
            <input name=${name} size="8" value=${fields[name]} onInput=${(e) => setFields({ ...fields, [name]: e.target.value })} />
          </label>`)}
        <button>${t('web.choose.go')}</button>
      </form>
      <p class="quiet">${t('web.choose.turbulence', { turbulence: fixed(turbulence, 1) })}</p>
      ${fault && html`<${Fault} fault=${fault} />`}
      ${asked && !fault && !value && html`<${Waiting} text=${work ? t('web.choose.working', work) : t('web.cards.working')} />`}
      ${value && html`<${Answer} doc=${value} />`}
    </section>`;
}

function Answer({ doc }) {
  const kn = fixed(doc.setups[0].outlooks[2].change_kn, 0);
  const names = ['wing', 'set', 'crew', 'time', 'interval', 'foils', 'fastest', 'sheet', 'heel', 'less', 'now', 'more', 'verdict'];
  return html`
    <div class="scroller">
      <table>
        <thead><tr>${names.map((name) => html`<th scope="col">${t(`web.choose.head.${name}`, { kn })}</th>`)}</tr></thead>
        <tbody>${doc.setups.map((setup) => html`<${Row} doc=${doc} setup=${setup} />`)}</tbody>
      </table>
    </div>
    <p class="quiet">${doc.interval}</p>
    <p class="quiet">${doc.caution}</p>`;
}

function Row({ doc, setup }) {
  const now = setup.outlooks[1];
  return html`
    <tr>
      <td>${setup.wing}</td><td>${setup.foils}</td><td class="n">${fixed(setup.crew_mass_kg, 0)}</td>
      <td class="n">${time(now.time_s)}</td><td>${t('web.choose.to', { low: time(now.time_low_s), high: time(now.time_high_s) })}</td>
      <td class="n">${share(now.foiling_ratio)}</td><td class="n">${share(setup.fastest_ratio)}</td>
      <td class="n">${share(now.sheet_load_passed_ratio)}</td><td class="n">${share(now.heel_passed_ratio)}</td>
      ${setup.outlooks.map((one) => html`<td>${lost(doc, one)}</td>`)}
      <td>${setup.recommended ? html`<b>${setup.verdict}</b>` : setup.verdict}</td>
    </tr>`;
}

const known = (value) => value !== null && value !== undefined;
const time = (seconds) => (known(seconds) ? duration(seconds) : '\u2013');
const share = (ratio) => (known(ratio) ? percent(ratio) : '\u2013');

function lost(doc, outlook) {
  if (!known(outlook.regret_s)) return '\u2013';
  const seconds = fixed(outlook.regret_s, 0);
  const chances = [outlook.sheet_load_passed_ratio, outlook.heel_passed_ratio];
  if (!chances.every(known)) return t('web.choose.lost_unknown', { seconds });
  const worst = Math.max(...chances);
  return worst > doc.gust_chance_max_ratio ? t('web.choose.lost_over', { seconds, chance: percent(worst) }) : t('web.choose.lost', { seconds });
}
