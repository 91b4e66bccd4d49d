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

/** @param {{base: string, beside: {boat: any, base: string, paths: string[]}|null, reference: any, lanes: any[], view: any, pieces: any[]}} props */
export function Lanes({ base, beside, reference, lanes, view, pieces }) {
  const [ref, size] = useSize();
  const width = Math.max(0, size.width - LEFT - RIGHT);
  const paths = lanes.flatMap((lane) => lane.channels.map((channel) => channel.path));
  const data = useColumns(base, reference, paths, view, width);
  const others = useColumns(beside?.base ?? base, reference, beside ? paths.filter((path) => beside.paths.includes(path)) : [], view, width);
  useEffect(() => bindGestures(ref.current, { view, left: LEFT, right: RIGHT }), [view]);
  const each = Math.max(LEAST, Math.floor(size.height / Math.max(1, lanes.length)) - HEAD);
  return html`
    <div class="lane-stack" ref=${ref} tabindex="0" role="application" aria-label=${t('web.debrief.lanes_label')}>
      ${size.width > 0 && lanes.map((lane) => html`
        <${Lane} key=${lane.name} lane=${lane} data=${data} beside=${beside && { boat: beside.boat, data: others }} view=${view} pieces=${pieces} width=${size.width}
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
