/** What lies on the desk now, what it comes to, and who is told when that changes. */

import type { Desk } from "../../../src/view/address/recipe-address.ts";
import type { BookShelf } from "../../../src/view/catalogue.ts";
import type { ReaderPart } from "../lazy/reader/reader-part.ts";
import { type DeskResult, workOutRecipe } from "./plan-recipe.ts";

export interface OnDesk {
  readonly desk: Desk;
  readonly result: DeskResult;
}

export interface DeskBench {
  readonly shelf: BookShelf;
  lying(): OnDesk;
  /** Changes some of what lies there; everybody is told before this returns. */
  change(part: Partial<Desk>): void;
  /** Tells what lies there now, and then every change. */
  tell(show: (lying: OnDesk) => void): void;
}

/** A desk with something on it from the start. */
export function openDeskBench(start: Desk, shelf: BookShelf, reader: ReaderPart): DeskBench {
  const told: ((lying: OnDesk) => void)[] = [];
  const workedOut = (desk: Desk): OnDesk => ({
    desk,
    result: workOutRecipe(desk, reader, shelf.notebooks),
  });
  let lying = workedOut(start);
  return {
    shelf,
    lying: () => lying,
    change: (part) => {
      lying = workedOut({ ...lying.desk, ...part });
      for (const show of told) show(lying);
    },
    tell: (show) => {
      told.push(show);
      show(lying);
    },
  };
}
