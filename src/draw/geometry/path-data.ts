/** SVG path data in millimetres: one way of writing numbers, and short commands to keep files small. */

/** In millimetres: a kilometre. */
const LARGEST = 1_000_000;

/** What stands behind the whole number, by thousandths: nothing, .001, .002 and so on, without trailing zeros. */
const DECIMALS = Array.from({ length: 1000 }, (_, thousandths) =>
  String(thousandths / 1000).slice(1),
);

/** A number with at most three decimals: no exponent, no trailing zeros, never -0. Most of a drawing is numbers. */
export function formatNumber(value: number): string {
  if (!(Math.abs(value) < LARGEST)) throw new RangeError(`a drawing has no place for ${value}`);
  const thousandths = Math.round(value * 1000);
  const size = Math.abs(thousandths);
  const whole = Math.floor(size / 1000);
  return `${thousandths < 0 ? "-" : ""}${whole}${DECIMALS[size - whole * 1000]}`;
}

/** A straight line between two points: `H` or `V` where it runs along an axis. */
export function lineData(x1: number, y1: number, x2: number, y2: number): string {
  const start = moveData(x1, y1);
  if (y1 === y2) return `${start}H${formatNumber(x2)}`;
  if (x1 === x2) return `${start}V${formatNumber(y2)}`;
  return `${start}L${formatNumber(x2)}${joined(y2)}`;
}

/** A closed rectangle. */
export function rectData(x: number, y: number, width: number, height: number): string {
  const [right, bottom] = [formatNumber(x + width), formatNumber(y + height)];
  return `${moveData(x, y)}H${right}V${bottom}H${formatNumber(x)}Z`;
}

/** A closed outline through points. */
export function polygonData(points: readonly (readonly [number, number])[]): string {
  const corners = points.map(([x, y]) => `${formatNumber(x)}${joined(y)}`);
  return `M${corners.join("L")}Z`;
}

/** The start of a line. */
export function moveData(x: number, y: number): string {
  return `M${formatNumber(x)}${joined(y)}`;
}

/** A number after another one: a minus sign needs no space before it. */
function joined(value: number): string {
  const text = formatNumber(value);
  return text.startsWith("-") ? text : ` ${text}`;
}
