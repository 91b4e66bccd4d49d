// A film or the crew's talk from this machine, beside the charts: nothing is sent anywhere. Where its second 0 lies is kept in this browser, by the file's name.
import { html, useEffect, useRef, useState } from '../dom.js';
import { t } from '../text.js';
import { useStore } from '../store.js';

const keyOf = (session, name) => `trimwright.film.${session}.${name}`;
const NUDGES = [-1, -0.1, 0.1, 1];

/** @param {any} at instant that a moment was clicked at, null while none was */
export function Film({ session, view, at }) {
  const [file, setFile] = useState(null);
  const [offset, setOffset] = useState(0);
  const player = useRef(null);
  const { from, to } = useStore(view);
  useEffect(() => () => file && URL.revokeObjectURL(file.url), [file]);
  // The charts' cursor goes with the film, and the charts with the cursor.
  useEffect(() => {
    if (!file) return undefined;
    let frame = 0;
    const follow = () => {
      frame = requestAnimationFrame(follow);
      const film = player.current;
      if (!film || film.paused) return;
      const now = view.whole.from + offset + film.currentTime;
      view.point(now);
      const shown = view.get();
      if (now < shown.from || now > shown.to) view.centre(now);
    };
    frame = requestAnimationFrame(follow);
    return () => cancelAnimationFrame(frame);
  }, [file, offset, view]);
  useEffect(() => {
    if (at !== null && player.current) player.current.currentTime = Math.max(0, at - view.whole.from - offset);
  }, [at]);
  const open = (event) => {
    const [chosen] = event.target.files;
    if (!chosen) return;
    setFile({ name: chosen.name, url: URL.createObjectURL(chosen) });
    setOffset(Number(localStorage.getItem(keyOf(session, chosen.name)) ?? 0));
  };
  const move = (seconds) => {
    const rounded = Math.round(seconds * 100) / 100;
    setOffset(rounded);
    localStorage.setItem(keyOf(session, file.name), String(rounded));
  };
  const here = () => move((from + to) / 2 - view.whole.from - player.current.currentTime);
  return html`
    <details class="film">
      <summary>${t('web.film.title')}</summary>
      <p class="quiet">${t('web.film.how')}</p>
      <input type="file" accept="video/*,audio/*" aria-label=${t('web.film.choose')} onChange=${open} />
      ${file && html`
        <video ref=${player} src=${file.url} controls></video>
        <p>${t('web.film.begins', { time: view.clock.timeOfDay(view.whole.from + offset), seconds: offset })}
          ${NUDGES.map((by) => html`<button key=${by} class="plain" aria-label=${t('web.film.nudge_named', { seconds: by })} onClick=${() => move(offset + by)}>${by > 0 ? '+' : '\u2212'}${Math.abs(by)} s</button>`)}
          <button onClick=${here}>${t('web.film.here')}</button></p>`}
    </details>`;
}
