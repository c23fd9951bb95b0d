/** The fields of a notebook as someone fills them in, and a notebook as such fields. */
import type { Axis } from "../../measure/axis.ts";
import type { GridAxis } from "../../measure/grid-axis.ts";
import { toMm } from "../../measure/length.ts";
import { centredDot } from "../../notebook/centred-dot.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import { NOTEBOOK_DEFAULTS } from "../../notebook/notebook-keys.ts";
import { isPaperName } from "../../notebook/paper.ts";

/** Everything is text, as typed. Lengths are in mm. */
export interface NotebookFields {
  /** "" to go by paper and dots. */
  readonly title: string;
  /** The file's name without its ending; "" to go by the title. */
  readonly slug: string;
  /** A name, or `own` for a size of its own. */
  readonly paper: string;
  readonly width: string;
  readonly height: string;
  readonly pitch: string;
  /** "" for the same as across. */
  readonly pitchDown: string;
  readonly dotsAcross: string;
  readonly dotsDown: string;
  /** "" for a grid that is centred. */
  readonly firstLeft: string;
  readonly firstTop: string;
  readonly count: string;
  /** "" for the same as across. */
  readonly countDown: string;
  readonly ruling: string;
  readonly binding: string;
  readonly middle: string;
}

export type FieldName = keyof NotebookFields;

/** The paper that has no name. */
export const OWN_PAPER = "own";

/** A centred A5 with 5 mm dots: what the page shows to someone new. */
export const USUAL_FIELDS: NotebookFields = {
  title: "",
  slug: "",
  paper: "A5",
  width: "148",
  height: "210",
  pitch: "5",
  pitchDown: "",
  dotsAcross: "26",
  dotsDown: "38",
  firstLeft: "",
  firstTop: "",
  countDown: "",
  ...NOTEBOOK_DEFAULTS,
};

export const FIELD_NAMES = Object.keys(USUAL_FIELDS) as readonly FieldName[];

/** The fields of one axis. */
export const AXIS_FIELDS = {
  across: {
    size: "width",
    pitch: "pitch",
    dots: "dotsAcross",
    firstDot: "firstLeft",
    count: "count",
  },
  down: {
    size: "height",
    pitch: "pitchDown",
    dots: "dotsDown",
    firstDot: "firstTop",
    count: "countDown",
  },
} as const satisfies Readonly<Record<Axis, Readonly<Record<string, FieldName>>>>;

/** Fields that read as this notebook. What is centred, or the same down as across, is left empty. */
export function fieldsOf(notebook: Notebook): NotebookFields {
  const { across, down } = notebook.axes;
  const isNamed = notebook.paperName !== undefined && isPaperName(notebook.paperName);
  return {
    title: notebook.title,
    slug: notebook.slug,
    paper: isNamed ? (notebook.paperName ?? OWN_PAPER) : OWN_PAPER,
    width: `${toMm(across.paper)}`,
    height: `${toMm(down.paper)}`,
    pitch: `${toMm(across.pitch)}`,
    pitchDown: down.pitch === across.pitch ? "" : `${toMm(down.pitch)}`,
    dotsAcross: `${across.dots}`,
    dotsDown: `${down.dots}`,
    firstLeft: firstDotText(across),
    firstTop: firstDotText(down),
    count: across.count,
    countDown: down.count === across.count ? "" : down.count,
    ruling: notebook.ruling,
    binding: notebook.binding,
    middle: notebook.middle,
  };
}

function firstDotText(grid: GridAxis): string {
  return grid.firstDot === centredDot(grid) ? "" : `${toMm(grid.firstDot)}`;
}
