/** Long rows of positions said in few words. */
import type { StepInterval } from "../../measure/box.ts";

/** So many evenly spaced positions are said as one row. */
const LEAST_ROW = 4;

/** `1, 6, 7, 12`; where four or more follow evenly, `every 3 from 5 to 26`. */
export function sayPositions(positions: readonly number[]): string {
  const parts: string[] = [];
  let start = 0;
  while (start < positions.length) {
    const count = evenRow(positions, start);
    const row = positions.slice(start, start + count);
    if (count >= LEAST_ROW) parts.push(saySeries(row));
    else parts.push(String(positions[start]));
    start += count >= LEAST_ROW ? count : 1;
  }
  return parts.join(", ");
}

/** `1–6, 7–12`; where four or more tracks of one size touch, `each from 7 to 38`. */
export function sayTracks(tracks: readonly StepInterval[]): string {
  const rows: StepInterval[][] = [];
  for (const track of tracks) {
    const before = rows.at(-1)?.at(-1);
    if (before && before.from + before.length === track.from) rows.at(-1)?.push(track);
    else rows.push([track]);
  }
  return rows.map(sayTouching).join(", ");
}

function sayTouching(row: readonly StepInterval[]): string {
  const [first, last] = [row[0], row.at(-1)];
  if (row.length < LEAST_ROW || !first || !last) {
    return row.map(({ from, length }) => `${from}–${from + length}`).join(", ");
  }
  return `each from ${first.from} to ${last.from + last.length}`;
}

/** How many positions from a place on have one and the same distance. */
function evenRow(positions: readonly number[], start: number): number {
  const distance = (index: number) => (positions[index + 1] ?? Infinity) - (positions[index] ?? 0);
  let end = start;
  while (end + 1 < positions.length && distance(end) === distance(start)) end++;
  return end - start + 1;
}

function saySeries(row: readonly number[]): string {
  const [first = 0, second = 0] = row;
  const step = second - first;
  const every = step === 1 ? "all" : `every ${step}`;
  return `${every} from ${first} to ${row.at(-1)}`;
}
