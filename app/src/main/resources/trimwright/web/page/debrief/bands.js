// Bands over the time axis: the whole session with the window that is shown, and below it what the day was cut into.
import { html, useEffect } from '../dom.js';
import { useStore } from '../store.js';
import { t, wordFor } from '../text.js';
import { useSize } from '../hooks.js';
import { bindGestures } from './gestures.js';
import { LEFT, RIGHT } from './lane.js';

const ROW = 18;
const GROUPS = ['leg', 'turn', 'phase', 'off_foil'];

/** The whole session, always: click or drag to go there. */
export function Overview({ view, pieces }) {
  const [ref, size] = useSize();
  const { from, to } = useStore(view);
  useStore(view.clock);
  const { whole } = view;
  const width = size.width - LEFT - RIGHT;
  const x = (at) => LEFT + ((at - whole.from) / (whole.to - whole.from)) * width;
  const goTo = (event) => {
    if (event.buttons !== 1) return;
    const share = (event.clientX - ref.current.getBoundingClientRect().left - LEFT) / width;
    const middle = whole.from + share * (whole.to - whole.from);
    view.show(middle - (to - from) / 2, middle + (to - from) / 2);
  };
  return html`
    <div class="overview" ref=${ref} onPointerDown=${goTo} onPointerMove=${goTo} onDblClick=${view.all}>
      ${width > 50 && html`
        <svg width=${size.width} height="34" aria-hidden="true">
          <rect class="whole" x=${LEFT} y="2" width=${width} height="16" rx="2" />
          ${pieces.filter((piece) => piece.group === 'phase' || piece.group === 'turn').map((piece) => html`
            <rect class=${`piece ${piece.group} ${piece.kind}`} x=${x(piece.from)} y="4" width=${Math.max(0.8, x(piece.to) - x(piece.from))} height="12" />`)}
          <rect class="window" x=${x(from)} y="1" width=${Math.max(3, x(to) - x(from))} height="18" rx="2" />
          <text x=${LEFT} y="31">${view.clock.timeOfDay(whole.from)}</text>
          <text x=${LEFT + width} y="31" text-anchor="end">${view.clock.timeOfDay(whole.to)}</text>
          <text x="4" y="15">${t('web.debrief.all')}</text>
        </svg>`}
    </div>`;
}

/** Pieces of the day inside the window, one row a group. */
export function Bands({ view, pieces, onPick }) {
  const [ref, size] = useSize();
  const { from, to } = useStore(view);
  useStore(view.clock);
  useEffect(() => bindGestures(ref.current, { view, left: LEFT, right: RIGHT }), [view]);
  const width = size.width - LEFT - RIGHT;
  const x = (at) => LEFT + Math.max(0, Math.min(1, (at - from) / (to - from))) * width;
  const groups = GROUPS.filter((group) => pieces.some((piece) => piece.group === group));
  return html`
    <div class="bands" ref=${ref}>
      ${width > 50 && html`
        <svg width=${size.width} height=${groups.length * ROW} role="img" aria-label=${t('web.debrief.bands_label')}>
          ${groups.map((group, row) => html`
            <text class="group" x="4" y=${row * ROW + 13}>${t(`web.debrief.group.${group}`)}</text>
            ${pieces.filter((piece) => piece.group === group && piece.to > from && piece.from < to).map((piece) => {
              const w = Math.max(1.5, x(piece.to) - x(piece.from));
              const name = wordFor(`debrief.kind.${piece.kind}`, t(`web.debrief.group.${piece.group}`));
              return html`
                <g class=${`piece ${piece.group} ${piece.kind}`} onClick=${() => onPick(piece)}>
                  <rect x=${x(piece.from)} y=${row * ROW + 1} width=${w} height=${ROW - 3} rx="2"><title>${name} ${view.clock.timeOfDay(piece.from)}</title></rect>
                  ${w > 7 * name.length && html`<text x=${x(piece.from) + w / 2} y=${row * ROW + 12.5} text-anchor="middle">${name}</text>`}
                </g>`;
            })}`)}
        </svg>`}
    </div>`;
}
