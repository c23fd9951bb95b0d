/** The part of an address behind #, read by every page: what it says is shown and says the same when it is written again, or there are words for it. */

import { startFit } from "../../site/script/app/initial-state.ts";
import { startStrip } from "../../site/script/app/start-strip.ts";
import { openDevice } from "../../site/script/device/device.ts";
import { readPageAddress, writePageAddress } from "../../site/script/draw-along/page-address.ts";
import { initialRecipe } from "../../site/script/recipe/initial-recipe.ts";
import { startSetup } from "../../site/script/setup/start-setup.ts";
import type { AddressIssue } from "../../src/issue/facts/address-issue.ts";
import { sayAddressIssue } from "../../src/issue/words/say-address-issue.ts";
import { addToStrip, namesOnStrip } from "../../src/view/address/add-to-strip.ts";
import { layoutsInAddress } from "../../src/view/address/carried-layouts.ts";
import {
  readDivisionAddress,
  writeDivisionAddress,
} from "../../src/view/address/division-address.ts";
import { readFitAddress, writeFitAddress } from "../../src/view/address/fit-address.ts";
import { readGalleryAddress, writeGalleryAddress } from "../../src/view/address/gallery-address.ts";
import type { AddressReading } from "../../src/view/address/hash-params.ts";
import { readNotebookAddress } from "../../src/view/address/notebook-address.ts";
import {
  notebookLabel,
  withNotebook,
  withoutNotebook,
} from "../../src/view/address/notebook-label.ts";
import {
  readRecipeAddress,
  unpackText,
  writeRecipeAddress,
} from "../../src/view/address/recipe-address.ts";
import { readSetupAddress, writeSetupAddress } from "../../src/view/address/setup-address.ts";
import { readStripAddress, writeStripAddress } from "../../src/view/address/strip-address.ts";
import { workOutDivision } from "../../src/view/division/division.ts";
import { nameNotebook } from "../../src/view/fields/name-notebook.ts";
import { fitResult } from "../../src/view/fit-result.ts";
import { setupResult } from "../../src/view/setup/setup-result.ts";
import { stripResult } from "../../src/view/strip/strip-result.ts";
import { ADDED, wildAddress } from "../random/wild-address.ts";
import { BOOK_SCRIPT, openWebSpace } from "../setup/web-space.ts";
import { promisePlan } from "./plan-promises.ts";
import { promise, promiseSaid, promiseSame, type Seen } from "./promises.ts";
import type { Sources } from "./sources.ts";
import { promiseStrip } from "./try-strip.ts";

export function addressKind({ catalogue, slugs, texts }: Sources) {
  const device = openDevice(openWebSpace().openTab(), BOOK_SCRIPT);
  const known = { notebooks: catalogue.notebooks.map(({ slug }) => slug), tags: ["plan"] };

  function attempt(hash: string, seen: Seen): void {
    let readings = 0;
    const read = <Said>(reading: AddressReading<Said>, show: (said: Said) => void) => {
      if (reading.ok) {
        readings += 1;
        show(reading.value);
        return;
      }
      tellAddress(reading.issue, seen);
    };
    read(readFitAddress(hash, catalogue.slugs), () => {
      const { fit } = seen.run(() => startFit(hash, device, catalogue));
      const again = writeFitAddress(fit);
      promiseSame(readFitAddress(again, catalogue.slugs), { ok: true, value: fit }, "another fit");
      promisePlan(seen.run(() => fitResult(fit, catalogue)).plan, seen);
    });
    read(readRecipeAddress(hash, catalogue.slugs), () => {
      const start = seen.run(() => initialRecipe(hash, { device, catalogue, texts: {} }));
      const { draft, issue } = start;
      if (issue) tellAddress(issue, seen);
      const again = readRecipeAddress(writeRecipeAddress(draft), catalogue.slugs, Infinity);
      promise(again.ok && again.value.text === draft.text, "another recipe", draft.text);
    });
    read(readStripAddress(hash, catalogue.carried), () => {
      const { asked } = seen.run(() => startStrip(hash, device, catalogue));
      promiseStrip(stripResult(asked, catalogue).strip, seen);
      promiseAgain(writeStripAddress, (one) => readStripAddress(one, catalogue.carried), asked);
    });
    read(readSetupAddress(hash), () => {
      const { asked } = seen.run(() => startSetup(hash, device, catalogue));
      const { faults } = seen.run(() => setupResult(asked, { catalogue, own: [] }));
      for (const { sentence, hint } of faults) promiseSaid(sentence, hint);
      promiseAgain(writeSetupAddress, readSetupAddress, asked);
    });
    read(readDivisionAddress(hash), ({ notebook, division }) => {
      if (!notebook || !division) return;
      workOutDivision(division, nameNotebook(notebook, catalogue.notebooks));
      promiseAgain(writeDivisionAddress, readDivisionAddress, { notebook, division });
    });
    seen.depth(readings > 0 ? `read by ${readings}` : "refused by all");
    promiseLooseReadings(hash, known);
  }

  return { name: "addresses", cases: wildAddress(slugs, texts.patterns), attempt };
}

function tellAddress(issue: AddressIssue, seen: Seen): void {
  seen.code(`address/${issue.kind}`);
  if (issue.kind === "bad-value") seen.code(`field/${issue.field.kind}`);
  promiseSaid(sayAddressIssue(issue));
}

/** What is written of something reads as what writes the same again. */
function promiseAgain<Asked>(
  write: (asked: Asked) => string,
  read: (hash: string) => AddressReading<unknown>,
  asked: Asked,
): void {
  const hash = write(asked);
  const again = read(hash);
  const isLong = !again.ok && again.issue.kind === "too-long";
  promise(again.ok || isLong, "an address that is not read", { hash, again });
}

/** Readers that take what they can use, and say nothing of the rest. */
function promiseLooseReadings(hash: string, known: Parameters<typeof readGalleryAddress>[1]): void {
  const query = readGalleryAddress(hash, known);
  promiseSame(readGalleryAddress(writeGalleryAddress(query), known), query, "another search");
  const said = readPageAddress(hash);
  promiseSame(readPageAddress(writePageAddress(said)), said, "another page");
  notebookLabel(hash);
  readNotebookAddress(hash);
  withNotebook(hash, "paper=A5", "dates=2027-03");
  promise(readNotebookAddress(withoutNotebook(hash)) === undefined, "a notebook that stays", hash);
  for (const { packed } of layoutsInAddress(hash)) unpackText(packed);
  for (const entry of ADDED) {
    const { text, outcome, count } = addToStrip(hash, { across: entry });
    promise(outcome !== "added" || namesOnStrip(text).size === count, "another strip", text);
  }
}
