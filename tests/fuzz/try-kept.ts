/** What is kept on a device and what is brought to it: every page opens, nothing that was kept is lost, and all that is kept goes out as a folder that comes in again. */
import fc from "fast-check";
import { startFit } from "../../site/script/app/initial-state.ts";
import { startStrip } from "../../site/script/app/start-strip.ts";
import { type Device, openDevice } from "../../site/script/device/device.ts";
import { keptCalendars } from "../../site/script/device/kept-calendars.ts";
import { keptText } from "../../site/script/device/kept-entry.ts";
import { keptPaper, keptPrinter } from "../../site/script/device/kept-printer.ts";
import { addToMyStrip } from "../../site/script/device/my-strip.ts";
import { keptRoute } from "../../site/script/device/setup-route.ts";
import { bookSetups, keptLayouts, keptSetups } from "../../site/script/lazy/folder/kept-setups.ts";
import { keptViews, ownNotebook } from "../../site/script/lazy/folder/kept-views.ts";
import { initialRecipe } from "../../site/script/recipe/initial-recipe.ts";
import { startSetup } from "../../site/script/setup/start-setup.ts";
import { reportIssues } from "../../src/issue/report/report.ts";
import { sayIssue } from "../../src/issue/words/say-issue.ts";
import { sayZipFault } from "../../src/issue/words/say-zip-fault.ts";
import { STRETCH } from "../../src/recipe/limits.ts";
import { contentFolder, writeZip } from "../../src/view/kept/content-folder.ts";
import type { KeptFile } from "../../src/view/kept/kept-file.ts";
import { meetKept } from "../../src/view/kept/meet-kept.ts";
import { readContentFiles } from "../../src/view/kept/read-content-files.ts";
import { type PickedFile, sortFiles } from "../../src/view/kept/sort-files.ts";
import { ticksOf, withTicks } from "../../src/view/setup/ticks.ts";
import { wildAddress, writtenAddress } from "../random/wild-address.ts";
import { wildFile } from "../random/wild-file.ts";
import { wildBytes, wildItems, wildZip } from "../random/wild-kept.ts";
import { demoText } from "../setup/demo-files.ts";
import { BOOK_SCRIPT, openWebSpace } from "../setup/web-space.ts";
import { promise, promiseSaid, promiseSame, type Seen } from "./promises.ts";
import type { Sources } from "./sources.ts";

/** What the names of a book at the top of a web space begin with. */
const PREFIX = "spanbook / ";

export function keptKind({ catalogue, slugs, texts }: Sources) {
  const files = fc.oneof(
    ...(["patterns", "notebooks", "strips", "setups"] as const).map((kind) => texts[kind]),
    wildFile({ owner: "strip", texts: texts.strips, slugs }),
    wildFile({ owner: "recipe", texts: texts.patterns, slugs }),
  );
  const written = writtenAddress(slugs, texts.patterns);
  const addresses = fc.oneof(written, wildAddress(slugs, texts.patterns));
  const ofBook = Object.fromEntries(
    catalogue.recipes.map(({ slug }) => [slug, demoText(`patterns/${slug}.md`)]),
  );

  function attempt({ items, zip, bytes }: Case, seen: Seen): void {
    const space = openWebSpace(items);
    const device = seen.run(() => openDevice(space.openTab(), BOOK_SCRIPT));
    for (const [name, text] of Object.entries(items))
      promise(
        name.endsWith(" version") || space.items.get(name) === text,
        "something that was kept is lost",
        name,
      );
    seen.depth(device.names().length > 1 ? "keeps" : "empty");
    promisePages(device, seen);
    promiseKeptNumbers(device);
    const views = seen.run(() => keptViews({ book: catalogue, texts: ofBook, device }));
    promiseFolder(
      views.map(({ file }) => file),
      device,
      seen,
    );
    promiseBrought({ name: "brought.zip", bytes: zip }, seen);
    promiseBrought({ name: "brought.md", bytes }, seen);
    promise(device.names().includes("version"), "no form");
  }

  function promisePages(device: Device, seen: Seen): void {
    seen.run(() => startFit("", device, catalogue));
    seen.run(() => startStrip("", device, catalogue));
    seen.run(() => startSetup("", device, catalogue));
    seen.run(() => initialRecipe("", { device, catalogue, texts: ofBook }));
    const around = { book: catalogue, texts: ofBook, device };
    seen.run(() => [keptSetups(around), keptLayouts(device), bookSetups(around, {})]);
  }

  /** What goes out builds: it comes in again without a problem. */
  function promiseFolder(all: readonly KeptFile[], device: Device, seen: Seen): void {
    const folder = seen.run(() =>
      contentFolder({
        files: all,
        notebook: ownNotebook(device, catalogue),
        pattern: slugs[0],
        texts: ofBook,
        ...{ when: catalogue.when },
        ...(catalogue.utcOffset !== undefined && { utcOffset: catalogue.utcOffset }),
      }),
    );
    const bytes = writeZip(folder.files);
    const sorted = sortFiles([{ name: "all.zip", bytes }]);
    promiseSame([sorted.issues, sorted.refused, sorted.ignored], [[], [], []], "a zip of ours");
    const book = { recipes: [], notebooks: [], when: catalogue.when, utcOffset: 0 };
    const read = readContentFiles(sorted.files, { book, kept: [] });
    promiseSame(read.issues, [], "a folder that does not build");
    promise(read.files.length === folder.files.length - 1, "a file of the folder is lost");
    seen.depth(folder.leftOut.length > 0 ? "leaves some out" : "folder of all");
  }

  function promiseBrought(picked: PickedFile, seen: Seen): void {
    const sorted = seen.run(() => sortFiles([picked]));
    for (const { fault } of sorted.refused) {
      seen.code(`zip/${fault.kind}`);
      const { sentence, hint } = sayZipFault(fault);
      promiseSaid(sentence, hint);
    }
    const kept: readonly KeptFile[] = [];
    const content = seen.run(() => readContentFiles(sorted.files, { book: catalogue, kept }));
    const issues = [...sorted.issues, ...content.issues];
    for (const issue of issues) {
      seen.code(`${issue.about}/${issue.kind}`);
      const { sentence, hint } = sayIssue(issue);
      promiseSaid(sentence, hint);
    }
    reportIssues(issues, new Map(sorted.files.map(({ path, text }) => [path, text])));
    const { fresh, known, clashes } = meetKept(content.files, { kept, texts: ofBook });
    const met = fresh.length + known.length + clashes.length;
    promise(met === content.files.length, "a file that is neither new nor known", met);
    if (picked.bytes[0] === 0x50)
      seen.depth(sorted.refused.length > 0 ? "zip refused" : "zip opened");
  }

  const cases = fc.record({
    items: wildItems(PREFIX, { addresses, files }),
    zip: wildZip(files),
    bytes: wildBytes(files),
  });
  return { name: "kept values", cases, attempt };
}

interface Case {
  readonly items: Readonly<Record<string, string>>;
  readonly zip: Uint8Array;
  readonly bytes: Uint8Array;
}

/** What was spoilt counts as not kept. */
function promiseKeptNumbers(device: Device): void {
  const { x, y } = keptPrinter(device);
  const isTrue = [x, y].every((factor) => factor >= STRETCH.min && factor <= STRETCH.max);
  promise(isTrue && keptPaper(device) !== undefined, "a printer that is corrected too much", {
    x,
    y,
  });
  keptCalendars(device);
  keptRoute(device);
  const ticks = device.get("ticks") ?? "";
  const drawn = ticksOf(withTicks(ticks, "own/2027-03/43", [43, 44]), "own/2027-03/43");
  promiseSame([...drawn], [43, 44], "ticks that are lost");
  const before = keptText(device, "strip");
  const { outcome } = addToMyStrip(device, { across: "seed-list" });
  const after = keptText(device, "strip");
  promise(outcome === "added" || before === after, "a strip that changes by nothing", after);
}
