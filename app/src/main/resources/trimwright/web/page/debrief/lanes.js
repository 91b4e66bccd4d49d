// The stack of lanes with one cursor through all of them.
import { html, useEffect, useRef } from '../dom.js';
import { useStore } from '../store.js';
import { timeOfDay } from '../format.js';
import { t } from '../text.js';
import { useSize } from '../hooks.js';
import { bindGestures } from './gestures.js';
import { useColumns } from './columns.js';
import { Lane, LEFT, RIGHT } from './lane.js';

const HEAD = 22;
const TIME_AXIS = 26;

export function Lanes({ base, reference, lanes, view, pieces }) {
  const [ref, size] = useSize();
  const data = useColumns(base, reference, lanes.flatMap((lane) => lane.channels.map((channel) => channel.path)), view, Math.max(0, size.width - LEFT - RIGHT));
  useEffect(() => bindGestures(ref.current, { view, left: LEFT, right: RIGHT }), [view]);
  const each = Math.max(84, Math.floor((size.height - TIME_AXIS) / Math.max(1, lanes.length)) - HEAD);
  return html`
    <div class="lane-stack" ref=${ref} tabindex="0" role="application" aria-label=${t('web.debrief.lanes_label')}>
      ${size.width > 0 && lanes.map((lane, i) => html`
        <${Lane} key=${lane.name} lane=${lane} data=${data} view=${view} pieces=${pieces} width=${size.width}
          height=${each + (i === lanes.length - 1 ? TIME_AXIS : 0)} last=${i === lanes.length - 1} />`)}
      <${Cursor} view=${view} width=${size.width} />
    </div>`;
}

/** One line through all lanes, with the time at its foot. */
function Cursor({ view, width }) {
  const { from, to, cursor } = useStore(view);
  const line = useRef(null);
  const shown = cursor !== null && cursor >= from && cursor <= to;
  const x = shown ? LEFT + ((cursor - from) / (to - from)) * (width - LEFT - RIGHT) : 0;
  useEffect(() => {
    if (line.current) line.current.style.transform = `translateX(${x.toFixed(1)}px)`;
  }, [x, shown]);
  return shown && html`<div class="cursor" ref=${line}><span class=${x > width - 90 ? 'left' : ''}>${timeOfDay(cursor)}</span></div>`;
}
