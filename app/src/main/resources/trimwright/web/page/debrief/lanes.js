// The stack of lanes with one cursor through all of them.
import { html, useEffect, useRef } from '../dom.js';
import { useStore } from '../store.js';
import { t } from '../text.js';
import { useSize } from '../hooks.js';
import { bindGestures } from './gestures.js';
import { useColumns } from './columns.js';
import { Lane, LEFT, RIGHT } from './lane.js';
import { TimeAxis } from './timeaxis.js';

const HEAD = 22;
/** Below this a lane says nothing any more; the stack scrolls instead. */
const LEAST = 52;

export function Lanes({ base, reference, lanes, view, pieces }) {
  const [ref, size] = useSize();
  const data = useColumns(base, reference, lanes.flatMap((lane) => lane.channels.map((channel) => channel.path)), view, Math.max(0, size.width - LEFT - RIGHT));
  useEffect(() => bindGestures(ref.current, { view, left: LEFT, right: RIGHT }), [view]);
  const each = Math.max(LEAST, Math.floor(size.height / Math.max(1, lanes.length)) - HEAD);
  return html`
    <div class="lane-stack" ref=${ref} tabindex="0" role="application" aria-label=${t('web.debrief.lanes_label')}>
      ${size.width > 0 && lanes.map((lane) => html`
        <${Lane} key=${lane.name} lane=${lane} data=${data} view=${view} pieces=${pieces} width=${size.width}
          height=${each} />`)}
      <${Cursor} view=${view} width=${size.width} height=${lanes.length * (each + HEAD)} />
    </div>
    <${TimeAxis} view=${view} width=${size.width} left=${LEFT} right=${RIGHT} />`;
}

/** One line through all lanes, with the time at its foot. */
function Cursor({ view, width, height }) {
  const { from, to, cursor } = useStore(view);
  useStore(view.clock);
  const line = useRef(null);
  const shown = cursor !== null && cursor >= from && cursor <= to;
  const x = shown ? LEFT + ((cursor - from) / (to - from)) * (width - LEFT - RIGHT) : 0;
  useEffect(() => {
    if (!line.current) return;
    line.current.style.transform = `translateX(${x.toFixed(1)}px)`;
    line.current.style.height = `${height}px`;
  }, [x, shown, height]);
  return shown && html`<div class="cursor" ref=${line}><span class=${x > width - 90 ? 'left' : ''}>${view.clock.timeOfDay(cursor)}</span></div>`;
}
