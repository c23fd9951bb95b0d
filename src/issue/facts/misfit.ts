/** Why a pattern cannot be laid out on a notebook, as facts. */
import type { Axis } from "../../measure/axis.ts";
import type { PageSide, PaperSide } from "../../measure/paper-side.ts";

/** Why an attempt does not fit. Sizes are in steps; `side` is the page of a spread. */
export type Misfit =
  | {
      /** A split's tracks and gaps need more steps than its area has. */
      readonly kind: "split-too-short";
      readonly side: PageSide;
      readonly path: string;
      readonly axis: Axis;
      readonly needs: number;
      readonly has: number;
    }
  | {
      /** Margins leave less than one step of an area. */
      readonly kind: "area-too-small";
      readonly side: PageSide;
      readonly path: string;
      readonly axis: Axis;
      readonly margins: number;
      readonly has: number;
    }
  | {
      /** No size of a `same` name lies within all its limits. */
      readonly kind: "same-impossible";
      readonly name: string;
      readonly min: number;
      readonly max: number;
    }
  | {
      /** Two written margins land on one side of the page with this binding. */
      readonly kind: "margin-clash";
      readonly side: PageSide;
      readonly path: string;
      readonly paperSide: PaperSide;
      readonly keys: readonly string[];
    }
  | {
      /** A unit needs a day, or a week's year, outside the years 1 to 9999. */
      readonly kind: "beyond-years";
      readonly span: "day" | "week" | "month" | "quarter" | "year";
      readonly needs: "day" | "week-year";
    }
  | {
      /** The recipe asks for more boxes or more work than a page can carry. */
      readonly kind: "too-much";
      readonly what: "boxes" | "work";
      readonly limit: number;
    };
