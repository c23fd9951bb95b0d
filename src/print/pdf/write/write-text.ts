/** A line of text on paper: at its anchor, turned, in as many fonts as its characters need. */
import type { TextMark } from "../../../draw/scene.ts";
import type { Style } from "../../../draw/style/role-style.ts";
import type { SetRun } from "../font/set-line.ts";
import { decimal, fillOperator, type Operators } from "./operators.ts";
import type { PdfWriter } from "./pdf-writer.ts";

/** Writes a mark in its look. Characters that no font has become boxes. */
export function writeText(
  writer: PdfWriter,
  operators: Operators,
  mark: TextMark,
  { text: colour, weight }: Style,
): void {
  const { size } = mark;
  const { width, runs } = writer.fonts.line(mark.text, weight);
  const along = matrixAlong(mark);
  let x = -width * anchorShare(mark.anchor);
  operators.hold("fill", colour, fillOperator);
  for (const run of runs) {
    for (const piece of shownPieces(writer, run)) {
      operators.hold("font", `/${piece.font} ${decimal(size)}`, (font) => `${font} Tf`);
      operators.show(`${along((x + piece.x) * size, piece.y * size)} Tm ${piece.show}`);
    }
    x += run.width;
  }
}

/** Which part of the width lies before the anchor. */
function anchorShare(anchor: TextMark["anchor"]): number {
  if (anchor === "middle") return 0.5;
  return anchor === "end" ? 1 : 0;
}

/** Where text begins that lies so far along a mark's line and above it. The page counts downwards, so letters are turned over. */
function matrixAlong({ x, y, turn = 0 }: TextMark): (along: number, above: number) => string {
  if (turn === 0) return (along, above) => `1 0 0 -1 ${decimal(x + along)} ${decimal(y - above)}`;
  const [cos, sin] = turnOf(turn);
  const turned = [cos, sin, sin, -cos].map(decimal).join(" ");
  return (along, above) => {
    const [right, down] = [x + along * cos + above * sin, y + along * sin - above * cos];
    return `${turned} ${decimal(right)} ${decimal(down)}`;
  };
}

/** Cosine and sine; quarters are exact. */
function turnOf(degrees: number): readonly [cos: number, sin: number] {
  const angle = (degrees * Math.PI) / 180;
  if (degrees % 90 === 0) return [Math.round(Math.cos(angle)), Math.round(Math.sin(angle))];
  return [Math.cos(angle), Math.sin(angle)];
}

/** In one font each. Lengths are in parts of the font size. */
interface ShownPiece {
  readonly font: string;
  readonly x: number;
  readonly y: number;
  readonly show: string;
}

function shownPieces({ embedded, missing }: PdfWriter, run: SetRun): readonly ShownPiece[] {
  if (run.kind === "found") {
    const font = embedded.use(run);
    return run.pieces.map((piece) => ({ font, ...piece }));
  }
  let x = 0;
  return missing.parts(run.characters).map(({ name, codes, width }) => {
    const piece = { font: name, x, y: 0, show: `${codes} Tj` };
    x += width;
    return piece;
  });
}
