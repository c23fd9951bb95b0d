/** What a whole plan leaves over, in steps: on one straight way across a page and on one down it. */
import type { Axis } from "../../measure/axis.ts";

export type Leftovers = Readonly<Record<Axis, number>>;
