/** What the fit page shows first: what its address says, else what was kept on the device, else what is usual. */
import type { AddressIssue } from "../../../src/issue/facts/address-issue.ts";
import { layOutPattern } from "../../../src/plan/plan-pattern.ts";
import { type Fit, type FitPart, readFitAddress } from "../../../src/view/address/fit-address.ts";
import type { Catalogue } from "../../../src/view/catalogue.ts";
import type { UnnamedNotebook } from "../../../src/view/fields/read-notebook-fields.ts";
import { NO_DATES } from "../../../src/view/fields/span-fields.ts";
import type { StripChoice } from "../../../src/view/fields/strip-fields.ts";
import type { Device } from "../device/device.ts";
import { keptText } from "../device/kept-entry.ts";
import { firstNotebook } from "./keepers-notebook.ts";

export interface Start {
  readonly fit: Fit;
  /** A strip that the address brings, from the time when this page had it. */
  readonly strip?: StripChoice;
  /** What is wrong with the address, where it cannot be read. */
  readonly issue?: AddressIssue;
  /** Does the address show another notebook than the one that is kept? */
  readonly isVisit: boolean;
}

/** The start for an address; a broken one counts as none. */
export function startFit(hash: string, device: Device, catalogue: Catalogue): Start {
  const kept = keptFit(device, catalogue);
  const address = readFitAddress(hash, catalogue.slugs);
  const said = address.ok ? address.value : {};
  const notebook = said.notebook ?? kept.notebook ?? firstNotebook(device, catalogue);
  const dates = said.dates ?? kept.dates ?? NO_DATES;
  const pattern = said.pattern ?? kept.pattern ?? usualPattern(notebook, catalogue);
  const isVisit =
    kept.notebook !== undefined &&
    said.notebook !== undefined &&
    JSON.stringify(kept.notebook) !== JSON.stringify(said.notebook);
  return {
    fit: { notebook, pattern, dates },
    ...(said.strip ? { strip: said.strip } : {}),
    ...(address.ok ? {} : { issue: address.issue }),
    isVisit,
  };
}

/** What is kept is written as an address, and read as carefully; a part that is spoilt takes no other with it. */
export function keptFit(device: Device, { slugs }: Catalogue): Partial<Fit> {
  const kept = (part: FitPart) => {
    const reading = readFitAddress(keptText(device, part) ?? "", slugs);
    return reading.ok && reading.value[part] ? { [part]: reading.value[part] } : {};
  };
  return { ...kept("notebook"), ...kept("pattern"), ...kept("dates") };
}

/** A week is what most people draw; else whatever fits. */
function usualPattern(notebook: UnnamedNotebook, catalogue: Catalogue): string {
  const weeks = catalogue.recipes.filter(({ purpose }) => purpose === "week");
  // What would make it fit is not asked: on a notebook where nothing fits that would take long.
  const fitting = [...weeks, ...catalogue.recipes].find(
    (recipe) => layOutPattern(recipe, notebook, catalogue.when).fits,
  );
  return (fitting ?? catalogue.recipes[0])?.slug ?? "";
}
