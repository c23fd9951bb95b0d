/** Which positions carry their number beside the paper: as many as can be read, the weightiest first. */
import { type Axis, otherAxis } from "../../measure/axis.ts";
import type { EdgeLine } from "../../plan/order/merged-edges.ts";
import { CAPITAL, textWidth } from "../text-width.ts";

export interface CountedPosition {
  readonly position: number;
  readonly role: "count" | "total" | "middle";
}

/** What wants a number along one axis. */
export interface CountOptions {
  readonly axis: Axis;
  /** Millimetres of every position. */
  readonly lines: readonly number[];
  readonly middles: readonly number[];
  /** Positions, the most wanted first. */
  readonly others: readonly number[];
  /** Font size in millimetres. */
  readonly size: number;
}

const AIR_ACROSS = 0.9;
const AIR_DOWN = 0.35;

/** First the two ends, then the middles, then the others, each where it does not run into one before it. */
export function countedPositions(filters: CountOptions): readonly CountedPosition[] {
  const { lines, middles, others } = filters;
  const last = lines.length - 1;
  const candidates: readonly CountedPosition[] = [
    { position: last, role: "total" },
    ...middles.map((position) => ({ position, role: "middle" as const })),
    ...[0, ...others].map((position) => ({ position, role: "count" as const })),
  ];
  const taken: CountedPosition[] = [];
  for (const candidate of candidates) {
    if (taken.every((other) => areApart(filters, other.position, candidate.position)))
      taken.push(candidate);
  }
  return taken.sort((a, b) => a.position - b.position);
}

/** The positions at which a layout has lines, the longest lines first. */
export function edgePositions(edges: readonly EdgeLine[], axis: Axis): readonly number[] {
  const lengths = new Map<number, number>();
  for (const { axis: along, at, from, to } of edges) {
    if (along === otherAxis(axis)) lengths.set(at, (lengths.get(at) ?? 0) + to - from);
  }
  return [...lengths].sort((a, b) => b[1] - a[1] || a[0] - b[0]).map(([position]) => position);
}

function areApart({ axis, lines, size }: CountOptions, a: number, b: number): boolean {
  const distance = Math.abs((lines[a] ?? 0) - (lines[b] ?? 0));
  if (a === b) return false;
  if (axis === "down") return distance >= size * CAPITAL + AIR_DOWN;
  const half = (position: number) => textWidth(String(position), size) / 2;
  return distance >= half(a) + half(b) + AIR_ACROSS;
}
