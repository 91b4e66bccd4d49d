// Calls and limit tones: large on the screen for a while; spoken and sounded only where this screen was told to.
import { html, useEffect, useState } from '../dom.js';
import { createStore, useStore } from '../store.js';
import { t } from '../text.js';

const KEPT = 'trimwright.live.speak';
/** How long a call stands on the screen (chosen). */
const SHOWN = 10000;
const MUTE = 60000;

const voice = createStore({ on: localStorage.getItem(KEPT) === 'yes', mutedUntil: 0 });
let audio = null;

function speakOn(on) {
  localStorage.setItem(KEPT, on ? 'yes' : 'no');
  voice.set({ on });
  if (!on) window.speechSynthesis?.cancel();
  // Browsers let sound begin with a press of the user only.
  if (on) audio = audio ?? new AudioContext();
}

/** Silences calls for a minute; tones go on. */
export function mute() {
  window.speechSynthesis?.cancel();
  voice.set({ mutedUntil: Date.now() + MUTE });
}

/** A short tone: high for a limit, low for too little moment. */
function sound(tone) {
  audio = audio ?? new AudioContext();
  const source = audio.createOscillator();
  const loud = audio.createGain();
  source.frequency.value = tone === 'limit' ? 1400 : 420;
  loud.gain.value = 0.3;
  source.connect(loud).connect(audio.destination);
  source.start();
  source.stop(audio.currentTime + 0.15);
}

/** The call to show now, '' for none; speaks and sounds on the way. */
export function useCall(state) {
  const { on, mutedUntil } = useStore(voice);
  const [heard, setHeard] = useState(null);
  const [shown, setShown] = useState('');
  const number = state?.['call.number'];
  const tone = state?.['call.tone'] ?? 'none';
  useEffect(() => {
    if (number === undefined) return undefined;
    setHeard(number);
    // What was called before the page was opened is no news.
    if (heard === null || number === heard || Date.now() < mutedUntil) return undefined;
    const text = state['call.text'];
    setShown(text);
    if (on && window.speechSynthesis) window.speechSynthesis.speak(new SpeechSynthesisUtterance(text));
    const timer = setTimeout(() => setShown(''), SHOWN);
    return () => clearTimeout(timer);
  }, [number]);
  useEffect(() => {
    if (on && tone !== 'none') sound(tone);
  }, [tone, on]);
  return { shown, tone, muted: Math.max(0, Math.ceil((mutedUntil - Date.now()) / 1000)) };
}

/** Why there are no calls at all, as far as that must be known at a glance. */
export function silenceText(state) {
  const why = state?.['call.silence'];
  return ['not_allowed', 'data', 'no_target'].includes(why) ? t('web.live.calls.off', { why: t(`web.live.calls.why.${why}`) }) : '';
}

/** Ashore: whether this screen speaks. */
export function Speak() {
  const { on } = useStore(voice);
  return html`
    <section class="key"><p>${t(on ? 'web.live.speak.on' : 'web.live.speak.ask')}</p>
      <button onClick=${() => speakOn(!on)}>${t(on ? 'web.live.speak.turn_off' : 'web.live.speak.turn_on')}</button></section>`;
}
