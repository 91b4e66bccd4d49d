// What lies still on the water: marks, gates, lines, boundary; and the map's north arrow and scale.
import { t, wordFor } from '../text.js';

const SOFT = '#566270';
const LENGTHS = [10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10000, 20000];

/**
 * @param {CanvasRenderingContext2D} ctx
 * @param {any} course of map/1: places as pairs north, east (m)
 * @param {{x: (east: number) => number, y: (north: number) => number}} place
 */
export function drawCourse(ctx, course, place) {
  const at = ([north, east]) => [place.x(east), place.y(north)];
  ctx.strokeStyle = SOFT;
  ctx.fillStyle = SOFT;
  ctx.lineWidth = 1;
  if (course.boundary_m.length) {
    ctx.setLineDash([2, 4]);
    ctx.beginPath();
    course.boundary_m.forEach((corner) => ctx.lineTo(...at(corner)));
    ctx.closePath();
    ctx.stroke();
  }
  for (const line of course.lines) {
    const port = at(line.port_m);
    const starboard = at(line.starboard_m);
    ctx.setLineDash(line.kind === 'gate' ? [3, 3] : []);
    ctx.beginPath();
    ctx.moveTo(...port);
    ctx.lineTo(...starboard);
    ctx.stroke();
    ctx.setLineDash([]);
    mark(ctx, port);
    mark(ctx, starboard);
    name(ctx, line.kind === 'gate' ? line.id : wordFor(`web.debrief.line.${line.kind}`, line.kind), [(port[0] + starboard[0]) / 2, (port[1] + starboard[1]) / 2]);
  }
  for (const one of course.marks) {
    mark(ctx, at(one.place_m));
    name(ctx, one.id, at(one.place_m));
  }
}

/** A buoy: a triangle standing on its place. */
function mark(ctx, [x, y]) {
  ctx.beginPath();
  ctx.moveTo(x, y - 6);
  ctx.lineTo(x + 4.5, y + 2.5);
  ctx.lineTo(x - 4.5, y + 2.5);
  ctx.closePath();
  ctx.fill();
}

function name(ctx, text, [x, y]) {
  ctx.font = '11.5px system-ui, sans-serif';
  ctx.lineWidth = 3;
  ctx.strokeStyle = '#ffffffd0';
  ctx.strokeText(text, x + 7, y + 4);
  ctx.fillText(text, x + 7, y + 4);
  ctx.lineWidth = 1;
  ctx.strokeStyle = SOFT;
}

/** North arrow and a bar of round length. */
export function drawFurniture(ctx, size, scale) {
  ctx.fillStyle = SOFT;
  ctx.strokeStyle = SOFT;
  ctx.lineWidth = 1.4;
  ctx.font = '12px system-ui, sans-serif';
  ctx.beginPath();
  ctx.moveTo(14, 34);
  ctx.lineTo(14, 12);
  ctx.moveTo(10, 18);
  ctx.lineTo(14, 11);
  ctx.lineTo(18, 18);
  ctx.stroke();
  ctx.fillText(t('web.debrief.north'), 22, 20);
  const metres = LENGTHS.findLast((one) => one * scale < size.width * 0.4) ?? LENGTHS[0];
  ctx.beginPath();
  ctx.moveTo(12, size.height - 14);
  ctx.lineTo(12, size.height - 10);
  ctx.lineTo(12 + metres * scale, size.height - 10);
  ctx.lineTo(12 + metres * scale, size.height - 14);
  ctx.stroke();
  ctx.fillText(metres < 1000 ? `${metres} m` : `${metres / 1000} km`, 16 + metres * scale, size.height - 8);
}
