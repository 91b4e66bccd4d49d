// The points of a target book, sorted into lanes. Only order and search here; every number is the server's.

/**
 * One lane a wind, lightest first: its points by angle (best ones among them), and the two best by name.
 * @returns {{tws: number, points: any[], unsolved: any[], upwind: any, downwind: any}[]}
 */
export function lanesOf(book) {
  const winds = [...new Set(book.points.map((point) => point.tws_kn))].sort((a, b) => a - b);
  return winds.map((tws) => {
    const here = book.points.filter((point) => point.tws_kn === tws).sort((a, b) => a.twa_deg - b.twa_deg);
    return {
      tws,
      points: here.filter((point) => point.solved),
      unsolved: here.filter((point) => !point.solved && point.mode === 'angle'),
      upwind: here.find((point) => point.solved && point.mode === 'upwind') ?? null,
      downwind: here.find((point) => point.solved && point.mode === 'downwind') ?? null,
    };
  });
}

/** The point that the address asks for, or the one closest to it; a middle wind's best upwind point at first. */
export function nearestPoint(lanes, choice) {
  const filled = lanes.filter((lane) => lane.points.length);
  if (!filled.length) return null;
  const tws = Number(choice.tws ?? filled[Math.floor(filled.length / 2)].tws);
  const lane = closest(filled, (one) => one.tws, tws);
  if (choice.mode && lane[choice.mode]) return lane[choice.mode];
  if (choice.twa === undefined) return lane.upwind ?? lane.points[0];
  return pointAt(lane, Number(choice.twa));
}

/** The lane's point closest to an angle; where a best point and a grid point are equally close, the grid point. */
export function pointAt(lane, twa) {
  const ranked = [...lane.points].sort((a, b) => (a.mode === 'angle' ? 0 : 1) - (b.mode === 'angle' ? 0 : 1));
  return closest(ranked, (point) => point.twa_deg, twa);
}

/** The next point along the lane; the same one at its end. */
export function neighbour(lane, point, step) {
  const at = lane.points.indexOf(point) + step;
  return lane.points[Math.max(0, Math.min(lane.points.length - 1, at))];
}

/** Stretches of points that follow each other and are sailed alike, for drawing. */
export function stretches(lane) {
  const found = [];
  for (const point of lane.points) {
    const last = found[found.length - 1];
    const gap = last && lane.unsolved.some((one) => one.twa_deg > last.at(-1).twa_deg && one.twa_deg < point.twa_deg);
    if (last && !gap && last[0].foiling === point.foiling) last.push(point);
    else found.push([point]);
  }
  return found;
}

/** The point as it is sailed in the day's gusts: the aim's figures in the place of the target's. */
export const atAim = (point) => ({
  ...point,
  ...Object.fromEntries(Object.entries(point).filter(([key]) => key.startsWith('aim_')).map(([key, value]) => [key.slice(4), value])),
});

export function closest(items, value, wanted) {
  return items.reduce((best, one) => (Math.abs(value(one) - wanted) < Math.abs(value(best) - wanted) ? one : best));
}
