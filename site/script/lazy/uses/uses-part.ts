/** What the part that counts uses of layouts gives to its page, once it is loaded. */
import type { UsesChart } from "../../../../src/draw/figure/uses-scene.ts";
import type { Scene } from "../../../../src/draw/scene.ts";
import type { AskedSetup } from "../../../../src/view/address/setup-address.ts";
import type { Catalogue } from "../../../../src/view/catalogue.ts";
import type { UsesView } from "../../../../src/view/kept/uses-view.ts";
import type { OwnLayout } from "../../../../src/view/strip/strip-result.ts";

/** A set-up that is kept here, or the book's own, on the keeper's notebook. */
export interface KeptSetup {
  readonly title: string;
  readonly asked: AskedSetup;
  /** Numbers of pages that are ticked as drawn. */
  readonly drawn: ReadonlySet<number>;
}

export interface UsesQuestion {
  readonly setups: readonly KeptSetup[];
  readonly own: readonly OwnLayout[];
  readonly catalogue: Catalogue;
}

export interface UsesCounted {
  /** Left out where nothing is used. */
  readonly view?: UsesView;
  /** Titles of set-ups in which something is wrong or missing. */
  readonly uncounted: readonly string[];
}

/** Steps that tell how many set-ups are done, a page or a spread each, and then what came of it. */
export type UsesSteps = Iterator<number, UsesCounted>;

export interface UsesPart {
  count(question: UsesQuestion): UsesSteps;
  scene(chart: UsesChart): Scene;
}

declare global {
  interface Window {
    readonly spanbookUses?: UsesPart;
  }
}

/** The part, loaded if it is not there yet. Rejects where its script cannot be loaded. */
export async function usesPart(
  window: Window,
  load: (name: string) => Promise<void>,
): Promise<UsesPart> {
  await load("uses.js");
  if (window.spanbookUses) return window.spanbookUses;
  throw new Error("the part that counts is not what was expected");
}
