import { describe, expect, it } from "vitest";
import type { Scene } from "../../src/draw/scene.ts";
import { paperSize } from "../../src/notebook/paper.ts";
import { NO_STRETCH } from "../../src/print/printer-correction.ts";
import { impose } from "../../src/print/sheets/impose.ts";
import { SAFE_MARGIN, safeArea } from "../../src/print/sheets/printer-paper.ts";
import { partMarks, type Sheet, type SheetPiece } from "../../src/print/sheets/sheet.ts";
import { sheetScene } from "../../src/print/sheets/sheet-scene.ts";
import { stripSheets } from "../../src/print/sheets/strip-sheets.ts";
import { NOTEBOOKS, notebookOf, stripOf, stripsOf } from "./demo-book.ts";

// All strips are drawn, on machines that may be busy.

function pieceOf(name: string, width: number, height: number): SheetPiece {
  const scene: Scene = {
    id: name,
    title: name,
    description: "A rectangle.",
    frame: { x: 0, y: 0, width, height },
    marks: [{ kind: "path", role: "cut", d: `M0 0H${width}V${height}H0Z` }],
  };
  return { scene, cut: "frame" };
}

const named = (sheets: readonly Sheet[]) =>
  sheets.map(({ parts }) =>
    parts.flatMap((part) =>
      part.kind === "figure" && part.description.endsWith("A rectangle.")
        ? [part.description.split(".")[0]]
        : [],
    ),
  );

const numbersOf = (sheet: Sheet) =>
  sheet.parts
    .flatMap(partMarks)
    .flatMap((mark) => (mark.kind === "path" ? [mark.d] : []))
    .flatMap((d) => {
      let [x, y] = [0, 0];
      return [...d.matchAll(/([MLHV])([^MLHVZ]*)/g)].map(([, command, written = ""]) => {
        const numbers = (written.match(/-?[\d.]+/g) ?? []).map(Number);
        if (command === "H") x = numbers[0] ?? 0;
        else if (command === "V") y = numbers[0] ?? 0;
        else [x = 0, y = 0] = numbers;
        return { x, y };
      });
    });

describe("imposing", () => {
  it.each<[string, readonly SheetPiece[], readonly (readonly string[])[], readonly string[]]>([
    ["puts several on one sheet", [pieceOf("a", 250, 30), pieceOf("b", 250, 30)], [["a", "b"]], []],
    [
      "takes as many sheets as it needs",
      ["a", "b", "c", "d", "e", "f"].map((name) => pieceOf(name, 250, 30)),
      [
        ["a", "b", "c", "d"],
        ["e", "f"],
      ],
      [],
    ],
    [
      "prints an extra where it fits",
      [pieceOf("a", 250, 30), { ...pieceOf("x", 240, 90), isExtra: true }],
      [["a", "x"]],
      [],
    ],
    [
      "leaves an extra out that needs a sheet",
      [pieceOf("a", 250, 90), { ...pieceOf("x", 240, 90), isExtra: true }],
      [["a"]],
      ["x"],
    ],
    [
      "names what no sheet has room for",
      [pieceOf("a", 300, 30), pieceOf("b", 250, 30)],
      [["b"]],
      ["a"],
    ],
    ["prints nothing of nothing", [], [], []],
  ])("%s", (_, pieces, sheets, leftOut) => {
    const imposed = impose({ title: "Pieces", pieces, paper: "A4" });
    expect(named(imposed.sheets)).toEqual(sheets);
    expect(imposed.leftOut.map(({ scene }) => scene.title)).toEqual(leftOut);
  });

  it("lays sheets on their side for strips and upright for what is high", () => {
    const isWide = (piece: SheetPiece) => {
      const [sheet] = impose({ title: "Piece", pieces: [piece], paper: "A4" }).sheets;
      return sheet !== undefined && sheet.width > sheet.height;
    };
    expect(isWide(pieceOf("strip", 250, 30))).toBe(true);
    expect(isWide(pieceOf("page", 150, 210))).toBe(false);
  });

  it("numbers the sheets when there are several", () => {
    const pieces = Array.from({ length: 5 }, (_, index) => pieceOf(`p${index}`, 250, 30));
    expect(
      impose({ title: "Strips", pieces, paper: "A4" }).sheets.map(({ title }) => title),
    ).toEqual(["Strips (1 of 2)", "Strips (2 of 2)"]);
  });
});

describe("sheets of the book's strips", () => {
  const all = NOTEBOOKS.flatMap((notebook) =>
    stripsOf(notebook).map((strip) => [strip.slug, notebook.slug, strip] as const),
  );

  it.each(all)(
    "%s for %s stay inside of what a printer prints, marks and all",
    (...[, , strip]) => {
      for (const paper of ["A4", "letter"] as const) {
        const { sheets, leftOut } = stripSheets({ title: strip.title, strips: [strip], paper });
        expect(leftOut.filter(({ isExtra }) => !isExtra)).toEqual([]);
        for (const sheet of sheets) {
          const upright = paperSize(paper);
          const size = { width: sheet.width, height: sheet.height };
          expect([upright.width, upright.height]).toContain(sheet.width);
          const area = safeArea(size, SAFE_MARGIN, NO_STRETCH);
          const outside = numbersOf(sheet).filter(
            ({ x, y }) =>
              x < area.x - 0.001 ||
              y < area.y - 0.001 ||
              x > area.x + area.width + 0.001 ||
              y > area.y + area.height + 0.001,
          );
          expect(outside).toEqual([]);
        }
      }
    },
  );

  it("hold copies for a group, and one pocket for each strip", () => {
    const strips = [stripOf("everyday", "a6"), stripOf("everyday", "a5")];
    const { sheets, leftOut } = stripSheets({ title: "Group", strips, paper: "A4", copies: 3 });
    const drawn = sheets.flatMap(({ parts }) =>
      parts.flatMap((part) => (part.kind === "figure" ? [part.description.split(".")[0]] : [])),
    );
    expect(drawn.filter((name) => name?.startsWith("Everyday strip for A6"))).toHaveLength(3);
    expect(drawn.filter((name) => name?.startsWith("Everyday strip for A5"))).toHaveLength(3);
    const pockets = drawn.filter((name) => name?.startsWith("Pocket")).length;
    expect(pockets + leftOut.length).toBe(2);
  });

  it("say how they are printed, measured and cut", () => {
    const { sheets } = stripSheets({
      title: "Everyday strip",
      strips: [stripOf("everyday", notebookOf("a5").slug)],
      paper: "A4",
      printer: { x: 1.004, y: 0.998 },
    });
    const texts = sheets.flatMap(({ parts }) =>
      parts.flatMap(({ marks }) =>
        marks.flatMap((mark) => (mark.kind === "text" ? [mark.text] : [])),
      ),
    );
    const said = texts.join(" ");
    for (const words of [
      "Print at 100 % (actual size)",
      "each is 100 mm long",
      "enter its length on the measure page; a host writes 100 divided by it into book.yaml",
      "stretched by x 1.004 and y 0.998",
      "Cut away from your body, on a cutting mat, with the blade along a metal edge.",
      "Children cut with somebody's help.",
      "short side: x",
      "long side: y",
    ])
      expect(said).toContain(words);
  });

  it("are drawn for the screen with all that is printed", () => {
    const [sheet] = stripSheets({
      title: "Everyday strip",
      strips: [stripOf("everyday", "a5")],
      paper: "A4",
    }).sheets;
    if (!sheet) throw new Error("no sheet");
    const scene = sheetScene(sheet, "sheet-everyday-a5");
    expect(scene.frame).toEqual({ x: 0, y: 0, width: 297, height: 210 });
    expect(scene.marks.slice(1)).toEqual(sheet.parts.flatMap(partMarks));
    expect(scene.description).toContain("Everyday strip for A5");
  });
});
