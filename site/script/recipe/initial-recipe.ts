/** What lies on the recipe page first: what the address says, else what was kept on the device, else a small recipe. */
import type { AddressIssue } from "../../../src/issue/facts/address-issue.ts";
import { readAddress, writeAddress } from "../../../src/view/address/hash-params.ts";
import {
  NOTEBOOK_ADDRESS_KEYS,
  readNotebookEntries,
} from "../../../src/view/address/notebook-address.ts";
import { addressOfNotebook } from "../../../src/view/address/notebook-label.ts";
import {
  type RecipeAddress,
  type RecipeDraft,
  readKeptRecipe,
  readRecipeAddress,
} from "../../../src/view/address/recipe-address.ts";
import type { Catalogue } from "../../../src/view/catalogue.ts";
import type { UnnamedNotebook } from "../../../src/view/fields/read-notebook-fields.ts";
import { keptPath } from "../../../src/view/kept/kept-file.ts";
import { firstNotebook } from "../app/keepers-notebook.ts";
import type { Device } from "../device/device.ts";
import { keptText } from "../device/kept-entry.ts";

export interface InitialRecipe {
  readonly draft: RecipeDraft;
  readonly issue?: AddressIssue;
  /** Is there another recipe that was kept on the device? */
  readonly kept?: RecipeDraft;
}

/** Recipes as written, by slug. */
export type RecipeTexts = Readonly<Record<string, string>>;

/** Does the address start from a pattern of the book, so that its text is needed? */
export function needsTexts(hash: string, { slugs }: Catalogue): boolean {
  const address = readRecipeAddress(hash, slugs);
  return address.ok && address.value.from !== undefined;
}

interface Sources {
  readonly device: Device;
  readonly catalogue: Catalogue;
  readonly texts: RecipeTexts;
}

/** The start for an address; a broken one counts as none. */
export function initialRecipe(hash: string, { device, catalogue, texts }: Sources): InitialRecipe {
  const address = readRecipeAddress(hash, catalogue.slugs);
  const said = address.ok ? address.value : {};
  const usual = keptNotebook(device) ?? firstNotebook(device, catalogue);
  const notebook = said.notebook ?? usual;
  const kept = readKeptRecipe(keptText(device, "recipe") ?? "", catalogue.slugs);
  const asked = askedRecipe(said, { device, texts });
  const found = address.ok ? asked.issue : address.issue;
  const issue = found ? { issue: found } : {};
  const written = asked.text;
  if (written === undefined) {
    const state = kept ?? { notebook, slug: "", text: FIRST_RECIPE };
    const own = { notebook: said.notebook ?? kept?.notebook ?? usual };
    return { draft: { ...state, ...own, ...(said.dates && { dates: said.dates }) }, ...issue };
  }
  const dates = said.dates && { dates: said.dates };
  const draft = { notebook, slug: asked.slug ?? "", text: written, ...dates };
  return { draft, ...issue, ...(kept && kept.text !== written && { kept }) };
}

/** The keeper's, without what an older form kept beside it: this page has no need of strips. */
function keptNotebook(device: Device): UnnamedNotebook | undefined {
  const said = addressOfNotebook(keptText(device, "notebook") ?? "");
  if (said === "") return undefined;
  const values = readAddress(`${writeAddress([])}&${said}`, NOTEBOOK_ADDRESS_KEYS);
  const reading = values.ok ? readNotebookEntries(values.value) : values;
  return reading.ok ? reading.value : undefined;
}

interface Asked {
  readonly text?: string | undefined;
  readonly slug?: string | undefined;
  readonly issue?: AddressIssue;
}

/** The text and the name that an address asks for: its own, or those of a pattern of the book or of one's own. */
export function askedRecipe(
  { text, slug, from, mine }: RecipeAddress,
  { device, texts }: Pick<Sources, "device" | "texts">,
): Asked {
  if (text !== undefined) return { text, slug };
  if (mine === undefined) return { text: from === undefined ? undefined : texts[from], slug };
  const kept = device.get(keptPath("patterns", mine));
  return kept === undefined
    ? { issue: { kind: "not-kept", slug: mine } }
    : { text: kept, slug: mine };
}

/** Enough to see what there is to change. */
export const FIRST_RECIPE = `---
title: A page of my own
purpose: page
tags: [plan]
page:
  margin: {top: 1, left: 1}
  rows:
    gap: 1
    tracks:
      - {label: Heading, steps: 3}
      - columns: {count: 2, gap: 1, labels: [Left, Right]}
        share: 2
      - {label: Notes, share: 1, fill: lines}
---

What the page is for, and how one draws it.
`;

declare global {
  interface Window {
    /** Set by `texts.js`, which the build writes. */
    readonly spanbookTexts?: RecipeTexts;
  }
}

/** The texts by slug, loaded if they are not there yet. Rejects where they cannot be loaded. */
export async function recipeTexts(
  window: Window,
  load: (name: string) => Promise<void>,
): Promise<RecipeTexts> {
  if (!window.spanbookTexts) await load("../fit/recipe/texts.js");
  return window.spanbookTexts ?? {};
}
