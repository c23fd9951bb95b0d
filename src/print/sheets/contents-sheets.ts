/** The contents of a book on paper: its groups, its patterns with their page numbers, and what did not fit. */
import { lineData } from "../../draw/geometry/path-data.ts";
import type { Rect } from "../../draw/geometry/rect.ts";
import { shortened } from "../../draw/label/text-block.ts";
import type { Mark, TextMark } from "../../draw/scene.ts";
import { textWidth } from "../../draw/text-width.ts";
import { sayFurtherTitle, sayMisfitRow } from "../../issue/words/sheet-words.ts";
import type { PaperSize } from "../../notebook/paper.ts";
import { type ContentsRow, type FlownRow, flowRows } from "./contents-flow.ts";
import type { Sheet, SheetPart } from "./sheet.ts";

export interface ContentsQuestion {
  readonly title: string;
  readonly subtitle: string;
  readonly rows: readonly ContentsRow[];
  readonly paper: PaperSize;
  readonly area: Rect;
}

const TITLE = { size: 6.4, baseline: 5.4 };
const SUBTITLE = { size: 3.2, baseline: 10.8 };
const HEAD = 18;
/** Room for the number of the sheet. */
const FOOT = 6;
const SIZE = 2.9;
const COLUMN = { least: 74, between: 12 };

/** As many sheets as the rows need, in as many columns as the paper has room for. */
export function contentsSheets(question: ContentsQuestion): readonly Sheet[] {
  const { rows, paper, title, area } = question;
  const columns = columnsOf(area);
  const flown = flowRows(rows, area.height - HEAD - FOOT);
  const count = Math.ceil(((flown.at(-1)?.column ?? 0) + 1) / columns.length);
  return Array.from({ length: count }, (_, index) => {
    const lying = flown.flatMap((one): readonly LyingRow[] => {
      const column = columns[one.column - index * columns.length];
      return column ? [{ ...one, ...column, y: area.y + HEAD + one.y, first: count }] : [];
    });
    return {
      title: sayFurtherTitle(title, index + 1),
      ...paper,
      parts: [...headParts(question), ...lying.map(rowPart), leaders(lying)],
    };
  });
}

interface Column {
  readonly x: number;
  readonly width: number;
}

/** A row on its sheet, with the number of sheets before the first pattern. */
type LyingRow = FlownRow & Column & { readonly first: number };

function columnsOf({ x, width }: Rect): readonly Column[] {
  const count = Math.max(1, Math.floor((width + COLUMN.between) / (COLUMN.least + COLUMN.between)));
  const each = (width - (count - 1) * COLUMN.between) / count;
  return Array.from({ length: count }, (_, index) => ({
    x: x + index * (each + COLUMN.between),
    width: each,
  }));
}

function headParts({ title, subtitle, area }: ContentsQuestion): readonly SheetPart[] {
  const line = { kind: "text", anchor: "start", x: area.x } as const;
  const size = Math.min(TITLE.size, area.width / textWidth(title, 1, "bold"));
  const y = area.y + TITLE.baseline;
  const below = area.y + SUBTITLE.baseline;
  return [
    { kind: "heading", marks: [{ ...line, role: "heading", y, size, text: title }] },
    {
      kind: "line",
      marks: [{ ...line, role: "note", y: below, size: SUBTITLE.size, text: subtitle }],
    },
  ];
}

function rowPart(lying: LyingRow): SheetPart {
  const { row, x, y, width, first } = lying;
  const line = { kind: "text", y, size: SIZE } as const;
  const title: TextMark = {
    ...line,
    role: row.kind === "group" ? "heading" : row.kind === "misfit" ? "note" : "label",
    x,
    anchor: "start",
    text: titleOf(lying),
  };
  if (row.kind !== "pattern") return { kind: "line", marks: [title] };
  const text = String(first + row.page + 1);
  return {
    kind: "line",
    marks: [title, { ...line, role: "count", x: x + width, anchor: "end", text }],
    link: {
      area: { x, y: y - SIZE, width, height: SIZE * 1.4 },
      title: row.title,
      page: first + row.page,
    },
  };
}

/** A title that is too long for its column ends in an ellipsis. */
function titleOf({ row, width }: LyingRow): string {
  const text = row.kind === "misfit" ? sayMisfitRow(row.title) : row.title;
  return shortened(text, SIZE, width - 10);
}

/** A dotted line from each title to its number. */
function leaders(rows: readonly LyingRow[]): SheetPart {
  const d = rows.flatMap((lying) => {
    if (lying.row.kind !== "pattern") return [];
    const from = lying.x + textWidth(titleOf(lying), SIZE) + 1;
    const to = lying.x + lying.width - 8;
    return from < to ? [lineData(to, lying.y - 0.5, from, lying.y - 0.5)] : [];
  });
  const mark: Mark = { kind: "path", role: "tick", d: d.join(""), dash: [0.25, 1.25] };
  return { kind: "artifact", marks: d.length === 0 ? [] : [mark] };
}
