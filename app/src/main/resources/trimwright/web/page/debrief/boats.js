// Chooses the boat that is looked at, and which others are drawn beside it.
import { html } from '../dom.js';
import { useStore } from '../store.js';
import { fixed } from '../format.js';
import { t } from '../text.js';
import { legAt, lostAt } from './legs.js';

/** @param {{fleet: any, focus: string, view: any, legs: Map<string, any[]>, onFocus: (name: string) => void, children: any}} props */
export function Boats({ fleet, focus, view, legs, onFocus, children }) {
  const { shown } = useStore(fleet);
  return html`
    <fieldset class="boats"><legend>${t('web.debrief.boats')}</legend>
      ${fleet.boats.map((boat) => html`
        <div class=${boat.name === focus ? 'boat focus' : 'boat'} key=${boat.name}>
          <input type="checkbox" aria-label=${t('web.debrief.show_boat', { boat: boat.name })} checked=${boat.name === focus || shown.includes(boat.name)}
            disabled=${boat.name === focus} onChange=${() => fleet.turn(boat.name)} />
          <label><input type="radio" name="focus" checked=${boat.name === focus} onChange=${() => onFocus(boat.name)} />
            <${BoatLine} boat=${boat} width=${26} /> <${BoatName} boat=${boat} /></label>
          <${LostHere} legs=${legs.get(boat.name) ?? []} view=${view} />
        </div>`)}
      ${children}
    </fieldset>`;
}

/** Its name with the letter by which charts call it. */
function BoatName({ boat }) {
  const within = boat.name.toLowerCase().startsWith(boat.letter.toLowerCase());
  return html`<span><b>${boat.letter}</b>${within ? boat.name.slice(boat.letter.length) : ` ${boat.name}`}</span>`;
}

/** A boat's line as it is drawn everywhere. */
export function BoatLine({ boat, width }) {
  return html`<svg width=${width} height="8" aria-hidden="true"><line x1="0" x2=${width} y1="4" y2="4" stroke=${boat.colour} stroke-width="2.6" stroke-dasharray=${boat.dash.join(' ')} /></svg>`;
}

/** Seconds lost so far on the leg that the boat is on at the cursor. */
function LostHere({ legs, view }) {
  const { cursor } = useStore(view);
  const leg = cursor === null ? null : legAt(legs, cursor);
  if (!leg) return null;
  return html`<output class="lost-here">${t('web.debrief.leg_short', { leg: leg.number })} <b>${fixed(lostAt(leg, cursor))}</b> s</output>`;
}
