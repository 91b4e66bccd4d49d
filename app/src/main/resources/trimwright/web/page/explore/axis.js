// Ticks of a drawn axis.

/** Round numbers within low to high, some of them. */
export function ticksOf(low, high, about) {
  const raw = (high - low) / Math.max(1, about);
  if (!(raw > 0)) return [low];
  const power = 10 ** Math.floor(Math.log10(raw));
  const step = [1, 2, 5, 10].map((one) => one * power).find((one) => one >= raw);
  const ticks = [];
  for (let i = Math.ceil(low / step - 1e-9); i * step <= high + 1e-9 * step; i++) ticks.push(Number((i * step).toPrecision(12)));
  return ticks;
}

/** Ends that hold all values and zero, a little wider. */
export function endsOf(values, least = 0) {
  const low = Math.min(0, ...values);
  const high = Math.max(0, least, ...values);
  const room = 0.06 * (high - low || 1);
  return [low < 0 ? low - room : 0, high + room];
}
