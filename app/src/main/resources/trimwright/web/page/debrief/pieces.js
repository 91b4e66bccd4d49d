// What the debrief cut the day into, as pieces over time: seconds since 1970, and the debrief's own record.

/**
 * @param {any} report debrief/1
 * @param {any} boat one of its boats
 * @returns {{group: string, kind: string, from: number, to: number, record: any}[]}
 */
export function piecesOf(report, boat) {
  const start = Date.parse(report.start_utc) / 1000;
  const piece = (group, record) => ({ group, kind: record.kind ?? group, from: start + record.start_s, to: start + record.start_s + record.duration_s, record });
  return [
    ...boat.legs.map((record) => piece('leg', record)),
    ...boat.turns.map((record) => piece('turn', record)),
    ...boat.phases.map((record) => piece('phase', record)),
    ...boat.off_foil.map((record) => piece('off_foil', record)),
  ];
}
