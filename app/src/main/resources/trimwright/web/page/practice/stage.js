// The boat as she sails: from astern, from above, the wing at three heights, what is asked of it, and the seconds lost.
// Drawn once; each picture after that only turns and moves what is there.
import { html, useEffect, useRef } from '../dom.js';
import { fixed } from '../format.js';
import { t } from '../text.js';
import { Astern, turnAstern } from './astern.js';
import { Above, turnAbove } from './above.js';
import { Cuts, turnCuts } from './cuts.js';
import { Bars, moveBars } from './bars.js';
import { Trace, growTrace } from './trace.js';

const FIGURES = [
  ['boat_speed_kn', 1], ['aim_speed_kn', 1], ['tws_kn', 1], ['awa_deg', 0], ['heel_deg', 1], ['stall_margin_deg', 1],
];

/** How long the driver's word stands (s). */
const WORD_STANDS = 2.5;

export function Stage({ offer, drill, sail, hands, mine, isFresh }) {
  const ref = useRef(null);
  useEffect(() => hands.listen(() => sail?.tell()), [sail]);
  useEffect(() => {
    const down = (event) => {
      if (/^(INPUT|SELECT|TEXTAREA)$/.test(event.target.tagName)) return;
      const act = hands.actOf(event.code);
      if (!act || !sail) return;
      event.preventDefault();
      if (!event.repeat) hands.press(act);
    };
    const up = (event) => {
      const act = hands.actOf(event.code);
      if (act) hands.release(act);
    };
    const away = () => hands.releaseAll();
    window.addEventListener('keydown', down);
    window.addEventListener('keyup', up);
    window.addEventListener('blur', away);
    return () => {
      window.removeEventListener('keydown', down);
      window.removeEventListener('keyup', up);
      window.removeEventListener('blur', away);
    };
  }, [sail]);
  useEffect(() => {
    if (!sail) return undefined;
    // Away from the button that was pressed, so that keys are the boat's.
    ref.current.focus({ preventScroll: true });
    let asked = 0;
    const draw = () => {
      asked = requestAnimationFrame(draw);
      hands.readPad();
      const frame = sail.frame();
      if (frame && ref.current) paint(ref.current, frame, offer.shape, drill, sail.trace);
    };
    draw();
    return () => cancelAnimationFrame(asked);
  }, [sail, offer]);
  return html`
    <section class="panel stage" ref=${ref} tabindex="-1" aria-label=${t('web.practice.stage')}>
      <div class="stage-head">
        <dl class="figures">${FIGURES.map(([key]) => html`<div class=${key}><dt>${t(`web.practice.figure.${key}`)}</dt><dd data-figure=${key}>\u2013</dd></div>`)}
          <div class="lost"><dt>${t('web.practice.figure.lost_s')}</dt><dd data-figure="lost_s">\u2013</dd></div></dl>
        <div class="word" aria-live="assertive"></div>
        <div class="cue"></div>
      </div>
      <div class="drawings">
        <figure><${Astern} shape=${offer.shape} /><figcaption>${t('web.practice.astern')}</figcaption></figure>
        <figure><${Cuts} shape=${offer.shape} /><figcaption>${t('web.practice.cuts')}</figcaption></figure>
        <figure><${Above} shape=${offer.shape} /><figcaption>${t('web.practice.above')}</figcaption></figure>
        <${Bars} shape=${offer.shape} hands=${hands} mine=${mine} />
      </div>
      <${Trace} drill=${drill} />
      ${isFresh && html`<p class="ready">${t('web.practice.ready')}</p>`}
    </section>`;
}

function paint(root, frame, shape, drill, trace) {
  for (const [key, decimals] of [...FIGURES, ['lost_s', 1]]) {
    const value = key === 'awa_deg' ? Math.abs(frame[key]) : frame[key];
    write(root.querySelector(`[data-figure=${key}]`), fixed(value, decimals));
  }
  root.classList.toggle('touched', frame.hull_touched);
  root.classList.toggle('stalled', frame.stall_margin_deg < 0);
  write(root.querySelector('.word'), wordAt(frame, drill));
  write(root.querySelector('.cue'), frame.slides ? t('web.practice.slides') : (frame.cue ?? ''));
  turnAstern(root, frame, shape);
  turnAbove(root, frame);
  turnCuts(root, frame);
  moveBars(root, frame, shape);
  growTrace(root, trace, drill);
}

/** The driver's word, or how long until the wing is handed over. */
function wordAt(frame, drill) {
  if (frame.time_s < 0) return t('web.practice.soon', { seconds: Math.ceil(-frame.time_s) });
  if (frame.time_s < 1) return t('web.practice.yours');
  if (frame.to_gun_s > -20) return t('web.practice.to_gun', { seconds: Math.ceil(frame.to_gun_s), metres: Math.round(frame.to_line_m) });
  const said = drill.words_s.find((word) => frame.time_s >= word && frame.time_s < word + WORD_STANDS);
  if (said !== undefined) return t(`web.practice.word.${drill.drill}`);
  const coming = drill.words_s.find((word) => frame.time_s >= word - 4 && frame.time_s < word);
  return coming === undefined ? '' : t('web.practice.coming', { seconds: Math.ceil(coming - frame.time_s) });
}

function write(element, text) {
  if (element.textContent !== text) element.textContent = text;
}
