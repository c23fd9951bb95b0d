/** What the fit page shows first: what its address says, else what was kept on the device, else what is usual. */
import type { AddressIssue } from "../../../src/issue/facts/address-issue.ts";
import { type Fit, readFitAddress } from "../../../src/view/address/fit-address.ts";
import type { BookShelf } from "../../../src/view/catalogue.ts";
import { USUAL_FIELDS } from "../../../src/view/fields/notebook-fields.ts";
import { type AskedNotebook, readFields } from "../../../src/view/fields/read-notebook-fields.ts";
import { NO_STRIP } from "../../../src/view/fields/strip-fields.ts";
import { workOut } from "../../../src/view/fit-result.ts";
import { verdictOf } from "../../../src/view/pattern/plan-status.ts";
import { type Device, KEPT } from "../device/device.ts";

export interface Start {
  readonly fit: Fit;
  /** What is wrong with the address, where it cannot be read. */
  readonly issue?: AddressIssue;
  /** Does the address show another notebook than the one that is kept? */
  readonly isVisit: boolean;
}

/** The start for an address; a broken one counts as none. */
export function startFit(hash: string, device: Device, shelf: BookShelf): Start {
  const kept = keptFit(device, shelf);
  const address = readFitAddress(hash, shelf.slugs);
  const said = address.ok ? address.value : {};
  const notebook =
    said.notebook ?? kept.notebook ?? chosenNotebook(device, shelf) ?? usualNotebook();
  const strip = said.strip ?? kept.strip ?? NO_STRIP;
  const pattern = said.pattern ?? kept.pattern ?? usualPattern(notebook, shelf);
  const isVisit =
    kept.notebook !== undefined &&
    said.notebook !== undefined &&
    JSON.stringify(kept.notebook) !== JSON.stringify(said.notebook);
  return {
    fit: { notebook, pattern, strip },
    ...(address.ok ? {} : { issue: address.issue }),
    isVisit,
  };
}

/** What is kept is written as an address, and read as carefully. */
export function keptFit(device: Device, shelf: BookShelf): Partial<Fit> {
  const kept = readFitAddress(device.recall(KEPT.fit) ?? "", shelf.slugs);
  return kept.ok ? kept.value : {};
}

/** The notebook of the book that was chosen on its own page. */
function chosenNotebook(device: Device, { notebooks }: BookShelf): AskedNotebook | undefined {
  const slug = device.recall(KEPT.notebook);
  const chosen = notebooks.find((notebook) => notebook.slug === slug);
  return chosen && { ...chosen, title: "", slug: "", body: "" };
}

function usualNotebook(): AskedNotebook {
  const usual = readFields(USUAL_FIELDS);
  if (usual.ok) return usual.value;
  throw new Error("the usual notebook is not all right");
}

/** A week is what most people draw; else whatever fits. */
function usualPattern(notebook: AskedNotebook, shelf: BookShelf): string {
  const weeks = shelf.recipes.filter(({ purpose }) => purpose === "week");
  const fitting = [...weeks, ...shelf.recipes].find(({ slug }) => {
    const { plan } = workOut({ notebook, pattern: slug, strip: NO_STRIP }, shelf);
    return verdictOf(plan).state !== "misfit";
  });
  return (fitting ?? shelf.recipes[0])?.slug ?? "";
}
