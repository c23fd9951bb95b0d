/** A drawing where it lies on a sheet: moved, and turned by quarters. */
import { lineData, moveData } from "../geometry/path-data.ts";
import type { Rect } from "../geometry/rect.ts";
import type { Mark, Scene } from "../scene.ts";

/** Degrees clockwise. */
export type QuarterTurn = 0 | 90;

/** Where the top left corner of a drawing's frame, as it lies, goes on the sheet; in millimetres. */
export interface SheetPlace {
  readonly x: number;
  readonly y: number;
  readonly turn: QuarterTurn;
}

/** A drawing's marks and the frame that is placed. */
export type PlacedDrawing = Pick<Scene, "marks" | "frame">;

type Move = (x: number, y: number) => readonly [x: number, y: number];

/** The marks of a drawing in the sheet's millimetres. */
export function marksOnSheet({ marks, frame }: PlacedDrawing, place: SheetPlace): readonly Mark[] {
  const move = moveOf(frame, place);
  return marks.map((mark) => {
    if (mark.kind === "path") return { ...mark, d: movePath(mark.d, move) };
    const [x, y] = move(mark.x, mark.y);
    const turn = (mark.turn ?? 0) + place.turn;
    return turn === 0 ? { ...mark, x, y } : { ...mark, x, y, turn };
  });
}

/** The same as a matrix: across is a·x + c·y + e, down is b·x + d·y + f. */
export function sheetMatrix(
  frame: Rect,
  { x, y, turn }: SheetPlace,
): readonly [a: number, b: number, c: number, d: number, e: number, f: number] {
  return turn === 0
    ? [1, 0, 0, 1, x - frame.x, y - frame.y]
    : [0, 1, -1, 0, x + frame.height + frame.y, y - frame.x];
}

/** Turned by 90 degrees, what was the frame's left edge is its top. */
function moveOf(frame: Rect, { x, y, turn }: SheetPlace): Move {
  if (turn === 0) return (px, py) => [x + px - frame.x, y + py - frame.y];
  return (px, py) => [x + frame.height - (py - frame.y), y + px - frame.x];
}

const COMMAND = /([MLHVZ])([^MLHVZ]*)/g;
const NUMBER = /-?[\d.]+/g;

/** Path data of the commands that `path-data.ts` writes; throws on any other. */
function movePath(d: string, move: Move): string {
  let [x, y] = [0, 0];
  return d.replace(COMMAND, (_, command: string, written: string) => {
    if (command === "Z") return "Z";
    const numbers = (written.match(NUMBER) ?? []).map(Number);
    const points: string[] = [];
    for (
      let index = 0;
      index < numbers.length;
      index += command === "H" || command === "V" ? 1 : 2
    ) {
      const from = move(x, y);
      const [first = Number.NaN, second = Number.NaN] = numbers.slice(index);
      if (command === "H") x = first;
      else if (command === "V") y = first;
      else [x, y] = [first, second];
      const to = move(x, y);
      points.push(command === "M" && index === 0 ? moveData(...to) : lineTo(from, to));
    }
    return points.join("");
  });
}

/** The line of `lineData` without its start. */
function lineTo(from: readonly [number, number], to: readonly [number, number]): string {
  return lineData(...from, ...to).slice(moveData(...from).length);
}
