// The one key: a press marks the last seconds, held for a second it silences calls for a minute. Which key it is can be chosen; a pedal or thumb switch that types one serves.
import { useEffect, useState } from '../dom.js';
import { getJson } from '../api.js';
import { mute } from './call.js';

const KEPT = 'trimwright.live.key';
const USUAL = 'm';
const SHOWN = 2000;
const HELD = 1000;

export const markKey = () => localStorage.getItem(KEPT) ?? USUAL;

/** What became of the last mark, for a moment: '', 'kept', 'not_kept', 'failed'; and a way to choose the key. */
export function useMark() {
  const [result, setResult] = useState('');
  const [choosing, setChoosing] = useState(false);
  useEffect(() => {
    let timer = 0;
    let holding = 0;
    const show = (what) => {
      setResult(what);
      clearTimeout(timer);
      timer = setTimeout(() => setResult(''), SHOWN);
    };
    const press = (event) => {
      if (event.repeat || event.ctrlKey || event.metaKey || event.altKey) return;
      if (choosing) {
        event.preventDefault();
        localStorage.setItem(KEPT, event.key);
        setChoosing(false);
      } else if (event.key === markKey()) {
        event.preventDefault();
        holding = setTimeout(() => {
          holding = 0;
          mute();
        }, HELD);
      }
    };
    const release = (event) => {
      if (event.key === markKey() && holding) {
        clearTimeout(holding);
        holding = 0;
        getJson('/api/live/mark', { method: 'POST' }).then(
          (answer) => show(answer.kept ? 'kept' : 'not_kept'),
          () => show('failed'),
        );
      }
    };
    window.addEventListener('keydown', press);
    window.addEventListener('keyup', release);
    return () => {
      clearTimeout(timer);
      clearTimeout(holding);
      window.removeEventListener('keyup', release);
      window.removeEventListener('keydown', press);
    };
  }, [choosing]);
  return { result, choosing, choose: () => setChoosing(true) };
}
