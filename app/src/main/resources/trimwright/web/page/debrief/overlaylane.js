// One quantity over seconds about an instant, a line for each turn or boat.
import { html } from '../dom.js';

const WIDTH = 440;
const HEIGHT = 86;
const LEFT = 38;
const RIGHT = 12;
const FOOT = 14;
/** Steps between lines of a grid. */
const STEPS = [0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500];

/**
 * @param {{row: string, name: string, value: {before_s: number, step_s: number}, seconds: number[], lit: string|null,
 *   lines: {id: string, values: any, ink: any}[], onLit: (id: string) => void, onPick: (line: any) => void}} props
 */
export function OverlayLane({ row, name, value, seconds, lines, lit, onLit, onPick }) {
  const known = lines.filter((line) => line.values[row]?.some((one) => one !== null));
  if (known.length === 0) return null;
  const all = known.flatMap((line) => line.values[row]).filter((one) => one !== null);
  const least = Math.min(...all);
  const most = Math.max(...all, least + 1e-6);
  const count = known[0].values[row].length;
  const x = (i) => LEFT + ((WIDTH - LEFT - RIGHT) * i) / (count - 1);
  const y = (one) => 4 + ((HEIGHT - FOOT - 8) * (most - one)) / (most - least);
  const place = (s) => x((s + value.before_s) / value.step_s);
  const step = STEPS.find((one) => (most - least) / one <= 3) ?? 1000;
  const ticks = [];
  for (let tick = Math.ceil(least / step) * step; tick <= most; tick += step) ticks.push(tick);
  const drawn = [...known].sort((a, b) => (a.id === lit) - (b.id === lit));
  return html`
    <h3>${name}</h3>
    <svg class="overlay" viewBox=${`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label=${name}>
      ${ticks.map((tick) => html`<line class="grid" x1=${LEFT} x2=${WIDTH - RIGHT} y1=${y(tick)} y2=${y(tick)} /><text x=${LEFT - 4} y=${y(tick) + 4} text-anchor="end">${Number(tick.toFixed(1))}</text>`)}
      ${seconds.map((s) => html`<line class=${s === 0 ? 'nought' : 'grid'} x1=${place(s)} x2=${place(s)} y1="4" y2=${HEIGHT - FOOT} /><text x=${place(s)} y=${HEIGHT - 2} text-anchor="middle">${s}</text>`)}
      ${drawn.flatMap((line) => piecesOf(line.values[row], x, y).map((points) => html`<polyline class=${line.id === lit ? 'turn lit' : 'turn'} points=${points}
        stroke=${line.ink.colour} stroke-dasharray=${line.ink.dash.join(' ')} onPointerEnter=${() => onLit(line.id)} onClick=${() => onPick(line)}><title>${line.id}</title></polyline>`))}
    </svg>`;
}

/** Runs without a gap. */
function piecesOf(values, x, y) {
  const pieces = [[]];
  values.forEach((one, i) => {
    if (one === null) pieces.push([]);
    else pieces[pieces.length - 1].push(`${x(i).toFixed(1)},${y(one).toFixed(1)}`);
  });
  return pieces.filter((piece) => piece.length > 1).map((piece) => piece.join(' '));
}
