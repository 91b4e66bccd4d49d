// The one key: marks the last seconds. Which key it is can be chosen; a pedal or thumb switch that types one serves.
import { useEffect, useState } from '../dom.js';
import { getJson } from '../api.js';

const KEPT = 'trimwright.live.key';
const USUAL = 'm';
const SHOWN = 2000;

export const markKey = () => localStorage.getItem(KEPT) ?? USUAL;

/** What became of the last mark, for a moment: '', 'kept', 'not_kept', 'failed'; and a way to choose the key. */
export function useMark() {
  const [result, setResult] = useState('');
  const [choosing, setChoosing] = useState(false);
  useEffect(() => {
    let timer = 0;
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
        getJson('/api/live/mark', { method: 'POST' }).then(
          (answer) => show(answer.kept ? 'kept' : 'not_kept'),
          () => show('failed'),
        );
      }
    };
    window.addEventListener('keydown', press);
    return () => {
      clearTimeout(timer);
      window.removeEventListener('keydown', press);
    };
  }, [choosing]);
  return { result, choosing, choose: () => setChoosing(true) };
}
