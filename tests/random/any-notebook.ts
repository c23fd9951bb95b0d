/** Notebooks of every kind, for checks that must hold whatever the notebook. */
import fc from "fast-check";
import { COUNTS, type GridAxis, MIDDLES } from "../../src/measure/grid-axis.ts";
import { fromMm, length } from "../../src/measure/length.ts";
import type { Notebook } from "../../src/notebook/notebook.ts";
import { BINDINGS, BOUNDS, RULINGS } from "../../src/notebook/notebook-keys.ts";
import { PAPER_NAMES, PAPERS, type PaperName } from "../../src/notebook/paper.ts";
import { foulCharacter } from "../../src/source/schema/forbidden-character.ts";

/** Checked notebooks: on named paper and on paper of any size, the grid anywhere on it. */
export function anyNotebook(): fc.Arbitrary<Notebook> {
  const named = fc.constantFrom(...PAPER_NAMES).map((paperName) => ({
    paperName,
    size: PAPERS[paperName],
  }));
  const side = fc.integer({ min: BOUNDS.paper.min * 100, max: 60_000 }).map((n) => n / 100);
  const measured = fc.tuple(side, side).map((size) => ({ size }));
  return fc
    .record({
      paper: fc.oneof(named, measured),
      slug: fc.stringMatching(/^[a-z0-9][a-z0-9-]{0,20}$/),
      title: anyLine(),
      ruling: fc.constantFrom(...RULINGS),
      binding: fc.constantFrom(...BINDINGS),
      middle: fc.constantFrom(...MIDDLES),
      body: fc.oneof(fc.constant(""), fc.string().map(asBody)),
      isSquare: fc.boolean(),
    })
    .chain(({ paper, isSquare, ...rest }) =>
      fc
        .tuple(anyAxis(paper.size[0]), anyAxis(paper.size[1]), anyAxis(paper.size[1]))
        .map(([across, down]) => ({
          ...rest,
          ...("paperName" in paper ? { paperName: paper.paperName } : {}),
          axes: { across, down: isSquare ? { ...down, count: across.count } : down },
        })),
    );
}

/** Notebooks such as are sold: the grid covers the paper, up to a margin of some steps. */
export function likelyNotebook(): fc.Arbitrary<Notebook> {
  const axisOf = (paperMm: number, pitchMm: number) => {
    const [paper, pitch] = [fromMm(paperMm), fromMm(pitchMm)];
    const most = Math.floor(paper / pitch);
    const dots = fc.integer({ min: Math.max(2, most - 5), max: Math.max(2, most - 1) });
    return fc
      .record({ dots, count: fc.constantFrom(...COUNTS), isCentred: fc.boolean() })
      .map(({ dots, count, isCentred }): GridAxis => {
        const spare = paper - (dots - 1) * pitch;
        const firstDot = length(isCentred ? spare / 2 : Math.min(pitch, spare - 1));
        return { dots, count, pitch, paper, firstDot };
      });
  };
  return fc
    .record({
      paperName: fc.constantFrom<PaperName>("A4", "A5", "A6", "B5", "B6", "JIS-B5", "letter"),
      pitch: fc.constantFrom(3.7, 4, 5, 5.08, 6, 6.35, 7),
      slug: fc.stringMatching(/^[a-z][a-z0-9-]{3,12}$/),
      binding: fc.constantFrom(...BINDINGS),
      middle: fc.constantFrom(...MIDDLES),
    })
    .chain(({ pitch, ...rest }) => {
      const [width, height] = PAPERS[rest.paperName];
      return fc.tuple(axisOf(width, pitch), axisOf(height, pitch)).map(([across, down]) => ({
        ...rest,
        title: rest.slug,
        ruling: "dots" as const,
        body: "",
        axes: { across, down },
      }));
    });
}

/** One line of text as a title may be: no control characters, not blank. */
export function anyLine(): fc.Arbitrary<string> {
  return fc
    .oneof(
      fc.string({ minLength: 1, maxLength: 60, unit: "binary" }),
      fc.string({ minLength: 1, maxLength: 60 }),
      fc.constantFrom("null", "1e3", "yes: no", "- a", "# b", '"c"', " d ", "e: [f", "%g", "x #y"),
    )
    .filter((text) => foulCharacter(text) === undefined && text.trim() !== "");
}

function asBody(text: string): string {
  return text.replace(/\r/g, "").trim();
}

/** An axis whose dots lie on the paper and whose edge steps have a size. */
function anyAxis(paperMm: number): fc.Arbitrary<GridAxis> {
  const paper = fromMm(paperMm);
  return fc
    .record({
      pitch: fc.integer({ min: 2_000_000, max: 12_000_000 }),
      isRound: fc.boolean(),
      part: fc.double({ min: 0, max: 1, noNaN: true }),
      lead: fc.double({ min: 0, max: 1, noNaN: true }),
      isCentred: fc.boolean(),
      count: fc.constantFrom(...COUNTS),
    })
    .map(({ pitch: nm, isRound, part, lead, isCentred, count }) => {
      const pitch = length(isRound ? Math.round(nm / 500_000) * 500_000 : nm);
      const most = Math.min(BOUNDS.dots.max, Math.floor(paper / pitch) - 1);
      const dots = Math.max(2, Math.round(2 + part * (most - 2)));
      const spare = paper - (dots - 1) * pitch;
      const firstDot = length(isCentred ? spare / 2 : Math.max(1, lead * (spare - 2)));
      return { dots, pitch, firstDot, paper, count };
    });
}
