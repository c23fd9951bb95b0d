/** What is known of a notebook: its paper, its grid, which side is bound and how its keeper counts. */
import type { Axis } from "../measure/axis.ts";
import type { GridAxis, Middle } from "../measure/grid-axis.ts";
import type { BINDINGS, RULINGS } from "./notebook-keys.ts";

export type Ruling = (typeof RULINGS)[number];
export type Binding = (typeof BINDINGS)[number];

/** A checked notebook. The paper's size lies in the two axes. */
export interface Notebook {
  readonly slug: string;
  readonly title: string;
  /** The written name of the paper, such as `A5`; left out where the size was given in millimetres. */
  readonly paperName?: string;
  readonly axes: Readonly<Record<Axis, GridAxis>>;
  readonly ruling: Ruling;
  readonly binding: Binding;
  readonly middle: Middle;
  /** The Markdown text below the front matter. */
  readonly body: string;
}
