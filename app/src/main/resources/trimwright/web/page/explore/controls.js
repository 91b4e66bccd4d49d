// One row a control: its name, a slider, the number. Keys, wheel, drag, touch and typing all end in onMove.
import { html, useEffect, useMemo, useRef, useState } from '../dom.js';
import { t } from '../text.js';
import { inputOf, tidy } from './inputs.js';
import { Term } from './number.js';

const FAST = 5;
const FINE = 0.2;

/**
 * @param {{name: string, value: number, range: [number, number], mark: number|undefined,
 *     onMove: (make: (now: number) => number) => void, onRest: () => void}} props range: what the server accepts; mark: the target's value
 */
export function Control({ name, value, range, mark, onMove, onRest }) {
  const { step, decimals, ...slider } = inputOf(name);
  const low = Math.max(slider.low, range[0]);
  const high = Math.min(slider.high, range[1]);
  const row = useRef(null);
  const latest = useRef(null);
  // From what the hand has reached, which may be ahead of what is drawn.
  latest.current = { move: (make) => onMove((now) => tidy(Math.max(low, Math.min(high, make(now))))), onMove, onRest };
  useEffect(() => {
    // Only for the control that has the focus; elsewhere the wheel scrolls the page.
    const turn = (event) => {
      if (event.ctrlKey || !row.current.contains(document.activeElement)) return;
      event.preventDefault();
      latest.current.move((now) => now - Math.sign(event.deltaY || event.deltaX) * step);
    };
    row.current.addEventListener('wheel', turn, { passive: false });
    return () => row.current?.removeEventListener('wheel', turn);
  }, [step]);
  const share = (at) => Math.max(0, Math.min(1, (at - low) / (high - low)));
  // Each state renders all controls; those that stay are not drawn again.
  return useMemo(() => html`
    <div class="control" ref=${row} data-control=${name}>
      <span class="control-name"><${Term} name=${name} /></span>
      <span class="control-slide" style=${{ '--share': share(value), '--mark': share(mark ?? low) }}>
        <input type="range" min=${low} max=${high} step=${10 ** -decimals} value=${value} aria-label=${t(`web.number.${name}`)}
          aria-valuetext=${`${value.toFixed(decimals)} ${t(`web.unit.${name}`)}`}
          onInput=${(e) => { const to = Number(e.target.value); latest.current.move(() => to); }} onChange=${() => latest.current.onRest()}
          onKeyDown=${(e) => onKey(e, step, { low, high }, latest.current.move)} />
        ${mark !== undefined && html`<span class="control-mark" title=${t('web.explore.target_mark')}></span>`}
      </span>
      <span class="control-value">
        <${Typed} name=${name} value=${value} decimals=${decimals} range=${range} onMove=${(make) => latest.current.onMove(make)} onRest=${() => latest.current.onRest()} />
        <span class="unit">${t(`web.unit.${name}`)}</span>
      </span>
    </div>`, [value, low, high, range[0], range[1], mark]);
}

function onKey(event, step, { low, high }, move) {
  if (event.ctrlKey || event.metaKey || event.altKey) return;
  const one = event.shiftKey ? step * FINE : step;
  const make = {
    ArrowRight: (now) => now + one,
    ArrowUp: (now) => now + one,
    ArrowLeft: (now) => now - one,
    ArrowDown: (now) => now - one,
    PageUp: (now) => now + FAST * step,
    PageDown: (now) => now - FAST * step,
    Home: () => low,
    End: () => high,
  }[event.key];
  if (!make) return;
  event.preventDefault();
  move(make);
}

/** The number as text. While it is typed in, answers that arrive leave it alone. */
function Typed({ name, value, decimals, range: [low, high], onMove, onRest }) {
  const [draft, setDraft] = useState(null);
  const take = () => {
    const typed = Number.parseFloat((draft ?? '').replace(',', '.').replace('\u2212', '-'));
    setDraft(null);
    // What is no number goes back to what it was.
    if (!Number.isFinite(typed)) return;
    onMove(() => Math.max(low, Math.min(high, typed)));
    onRest();
  };
  return html`<input type="text" inputmode="decimal" aria-label=${t('web.explore.value_of', { name: t(`web.number.${name}`) })}
    value=${draft ?? value.toFixed(decimals)} onFocus=${(e) => e.target.select()} onInput=${(e) => setDraft(e.target.value)} onChange=${take} onBlur=${() => setDraft(null)} />`;
}
