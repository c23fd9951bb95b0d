/** Set-ups and layouts that are kept here, read for whoever counts what is used. */
import { readRecipe } from "../../../../src/recipe/read/read-recipe.ts";
import { readSetup } from "../../../../src/recipe/read/read-setup.ts";
import { slugOf } from "../../../../src/source/slug.ts";
import { packText } from "../../../../src/view/address/recipe-address.ts";
import { readSetupAddress } from "../../../../src/view/address/setup-address.ts";
import { openCatalogue } from "../../../../src/view/catalogue.ts";
import { nameNotebook, unnamed } from "../../../../src/view/fields/name-notebook.ts";
import { nameSetup, type SetupChoice } from "../../../../src/view/fields/setup-fields.ts";
import { keptPath } from "../../../../src/view/kept/kept-file.ts";
import { ownTicksName, ticksOf } from "../../../../src/view/setup/ticks.ts";
import type { OwnLayout } from "../../../../src/view/strip/strip-result.ts";
import type { Device } from "../../device/device.ts";
import { keptText } from "../../device/kept-entry.ts";
import { keptFiles } from "../../device/kept-files.ts";
import type { KeptSetup } from "../uses/uses-part.ts";
import type { FolderBook } from "./folder-part.ts";
import { ownNotebook } from "./kept-views.ts";

/** All on the keeper's notebook. The one in use goes before a file for the same days and pages: it is newer. */
export function keptSetups({ book, device }: FolderBook): readonly KeptSetup[] {
  const catalogue = openCatalogue(book);
  const notebook = unnamed(ownNotebook(device, catalogue));
  const ticks = device.get("ticks") ?? "";
  const setupOf = (setup: SetupChoice, calendar = {}): KeptSetup => ({
    title: setup.title,
    asked: { notebook, setup, calendar },
    drawn: ticksOf(ticks, ownTicksName(setup)),
  });
  const used = readSetupAddress(keptText(device, "setup") ?? "");
  const inUse = used.ok && used.value.setup?.pages.length ? used.value : undefined;
  const files = keptFiles(device, "setups").flatMap((file) => {
    const reading = readSetup(file);
    return reading.ok ? [setupOf(reading.value)] : [];
  });
  const first = inUse?.setup && nameSetup(inUse.setup, [], catalogue.when.rule);
  const all = [...(first ? [setupOf(first, inUse?.calendar)] : []), ...files];
  const places = all.map(({ asked }) => ownTicksName(asked.setup));
  return all.filter((_, index) => places.indexOf(places[index] ?? "") === index);
}

/** The book's own as written, on the keeper's notebook; ticked are those of its page for the same notebook. */
export function bookSetups(
  { book, device }: FolderBook,
  texts: Readonly<Record<string, string>>,
): readonly KeptSetup[] {
  const catalogue = openCatalogue(book);
  const own = ownNotebook(device, catalogue);
  const { slug } = nameNotebook(unnamed(own), catalogue.notebooks);
  const ticks = device.get("ticks") ?? "";
  return Object.entries(texts).flatMap(([name, text]) => {
    const reading = readSetup({ path: keptPath("setups", name), text });
    if (!reading.ok) return [];
    const { value: setup } = reading;
    return {
      title: setup.title,
      asked: { notebook: unnamed(own), setup, calendar: {} },
      drawn: ticksOf(ticks, `${name}/${slug}`),
    };
  });
}

/** Those that can be read. */
export function keptLayouts(device: Device): readonly OwnLayout[] {
  return keptFiles(device, "patterns").flatMap((file) => {
    const reading = readRecipe(file);
    const { text } = file;
    return reading.ok
      ? [{ slug: slugOf(file.path), text, packed: packText(text), recipe: reading.value }]
      : [];
  });
}
