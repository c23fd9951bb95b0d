/** Everything that is kept as its page lists it: the files, and what lies in use and is no file yet. */
import type { Notebook } from "../../../../src/notebook/notebook.ts";
import { readNotebook } from "../../../../src/notebook/read-notebook.ts";
import { writeNotebook } from "../../../../src/notebook/write-notebook.ts";
import { readSetup } from "../../../../src/recipe/read/read-setup.ts";
import { readStripRecipe } from "../../../../src/recipe/read/read-strip-recipe.ts";
import { writeSetupRecipe } from "../../../../src/recipe/write-setup-recipe.ts";
import { writeStripRecipe } from "../../../../src/recipe/write-strip-recipe.ts";
import { slugOf } from "../../../../src/source/slug.ts";
import {
  layoutsInAddress,
  type PackedLayout,
} from "../../../../src/view/address/carried-layouts.ts";
import { readFitAddress } from "../../../../src/view/address/fit-address.ts";
import { LONGEST_ADDRESS, writeAddress } from "../../../../src/view/address/hash-params.ts";
import { writeMineAddress } from "../../../../src/view/address/mine-address.ts";
import { notebookEntries } from "../../../../src/view/address/notebook-address.ts";
import {
  packText,
  readKeptRecipe,
  writeRecipeAddress,
} from "../../../../src/view/address/recipe-address.ts";
import { readSetupAddress, writeSetupAddress } from "../../../../src/view/address/setup-address.ts";
import { readStripAddress, writeStripAddress } from "../../../../src/view/address/strip-address.ts";
import { type Catalogue, openCatalogue } from "../../../../src/view/catalogue.ts";
import { isSameGrid, nameNotebook, unnamed } from "../../../../src/view/fields/name-notebook.ts";
import { USUAL_FIELDS } from "../../../../src/view/fields/notebook-fields.ts";
import { readFields } from "../../../../src/view/fields/read-notebook-fields.ts";
import { nameSetup } from "../../../../src/view/fields/setup-fields.ts";
import { slugFor } from "../../../../src/view/fields/slug-for.ts";
import { nameStrip } from "../../../../src/view/fields/strip-fields.ts";
import {
  KEPT_KINDS,
  type KeptFile,
  type KeptKind,
  keptPath,
  kindOf,
} from "../../../../src/view/kept/kept-file.ts";
import { titleOf } from "../../../../src/view/kept/read-content-files.ts";
import { renamedFile } from "../../../../src/view/kept/rename-file.ts";
import type { Device } from "../../device/device.ts";
import { keptText } from "../../device/kept-entry.ts";
import { keptFiles, keptSlugs } from "../../device/kept-files.ts";
import type { FolderBook, KeptView } from "./folder-part.ts";

/** By kind; what lies in use comes first. */
export function keptViews({ book, device }: FolderBook): readonly KeptView[] {
  const catalogue = openCatalogue(book);
  const around = { catalogue, device, notebook: ownNotebook(device, catalogue) };
  return KEPT_KINDS.flatMap((kind) => {
    const files = keptFiles(device, kind);
    const used = inUse(kind, files, around).map(({ entry, file }) => ({
      ...viewOf(file, around),
      entry,
    }));
    return [...used, ...files.map((file) => viewOf(file, around))];
  });
}

interface Around {
  readonly catalogue: Catalogue;
  readonly device: Device;
  readonly notebook: Notebook;
}

/** The keeper's notebook, else the one of the book's that was chosen, else its first, else the usual one. */
export function ownNotebook(device: Device, { notebooks, slugs }: Catalogue): Notebook {
  const kept = readFitAddress(keptText(device, "notebook") ?? "", slugs);
  const chosen = notebooks.find(({ slug }) => slug === device.get("book-notebook"));
  const of = chosen ?? notebooks[0];
  const usual = readFields(USUAL_FIELDS);
  const asked = (kept.ok ? kept.value.notebook : undefined) ?? (of && unnamed(of));
  if (asked) return nameNotebook(asked, notebooks);
  if (usual.ok) return nameNotebook(usual.value, notebooks);
  throw new Error("the usual notebook is not all right");
}

interface Used {
  readonly entry: NonNullable<KeptView["entry"]>;
  readonly file: KeptFile;
}

/** What is shown on the pages that make things, where it is kept as no file. */
function inUse(kind: KeptKind, files: readonly KeptFile[], around: Around): readonly Used[] {
  const used = USED[kind]?.(around);
  const isKept =
    used === undefined ||
    files.some((file) =>
      kind === "notebooks" ? isNotebook(file, around.notebook) : file.text === used.file.text,
    );
  if (isKept) return [];
  const { slugs } = around.catalogue;
  const others = kind === "patterns" ? [...slugs] : [];
  const taken = [...others, ...keptSlugs(around.device, kind)];
  return [{ ...used, file: renamedFile(used.file, taken) }];
}

const USED: Readonly<Partial<Record<KeptKind, (around: Around) => Used | undefined>>> = {
  notebooks: ({ device, notebook }) =>
    keptText(device, "notebook") === undefined
      ? undefined
      : {
          entry: "notebook",
          file: { path: keptPath("notebooks", notebook.slug), text: writeNotebook(notebook) },
        },
  strips: ({ device, catalogue }) => {
    const own = ownLayouts(device).map(({ slug }) => slug);
    const names = new Set([...catalogue.carried, ...own]);
    const kept = readStripAddress(keptText(device, "strip") ?? "", names);
    const choice = kept.ok ? kept.value.strip : undefined;
    if (!choice || choice.across.length + choice.down.length === 0) return undefined;
    const recipe = nameStrip(choice, catalogue.strips);
    const file = { path: keptPath("strips", recipe.slug), text: writeStripRecipe(recipe) };
    return { entry: "strip", file };
  },
  setups: ({ device, catalogue }) => {
    const kept = readSetupAddress(keptText(device, "setup") ?? "");
    const choice = kept.ok ? kept.value.setup : undefined;
    if (!choice || choice.pages.length === 0) return undefined;
    const recipe = nameSetup(choice, catalogue.setups ?? [], catalogue.when.rule);
    const file = { path: keptPath("setups", recipe.slug), text: writeSetupRecipe(recipe) };
    return { entry: "setup", file };
  },
  patterns: ({ device, catalogue }) => {
    const draft = readKeptRecipe(keptText(device, "recipe") ?? "", catalogue.slugs);
    if (!draft) return undefined;
    const unnamedFile = { path: keptPath("patterns", draft.slug || "recipe"), text: draft.text };
    const slug = draft.slug || slugFor(titleOf(unnamedFile), { fallback: "recipe", taken: [] });
    return { entry: "recipe", file: { path: keptPath("patterns", slug), text: draft.text } };
  },
};

function isNotebook(file: KeptFile, notebook: Notebook): boolean {
  const reading = readNotebook(file);
  return (
    reading.ok && reading.value.title === notebook.title && isSameGrid(reading.value, notebook)
  );
}

function viewOf(file: KeptFile, around: Around): KeptView {
  const kind = kindOf(file.path);
  return {
    kind,
    file,
    title: titleOf(file),
    isInUse: kind === "notebooks" && isNotebook(file, around.notebook),
    ...OPENING[kind]?.(file, around),
  };
}

/** What is kept as files, and what came with the strip and the set-up in use. */
function ownLayouts(device: Device): readonly PackedLayout[] {
  const files = keptFiles(device, "patterns").map(({ path, text }) => ({
    slug: slugOf(path),
    packed: packText(text),
  }));
  const used = (["strip", "setup"] as const).map((name) => keptText(device, name) ?? "");
  return [...files, ...used.flatMap(layoutsInAddress)].filter(
    ({ slug }, index, all) => all.findIndex((one) => one.slug === slug) === index,
  );
}

type Opening = Pick<KeptView, "page" | "hash" | "link">;

const OPENING: Readonly<Partial<Record<KeptKind, (file: KeptFile, around: Around) => Opening>>> = {
  patterns: (file, { notebook, device }) => {
    const slug = slugOf(file.path);
    const link = writeRecipeAddress({ notebook: unnamed(notebook), slug, text: file.text });
    const isFile = device.get(file.path) === file.text;
    return {
      page: "recipe",
      hash: isFile ? writeMineAddress(slug) : "",
      ...(link.length <= LONGEST_ADDRESS && { link }),
    };
  },
  notebooks: (file) => {
    const reading = readNotebook(file);
    if (!reading.ok) return {};
    const hash = writeAddress(notebookEntries(reading.value));
    return { page: "fit", hash, link: hash };
  },
  strips: (file, { notebook, device }) => {
    const reading = readStripRecipe(file);
    if (!reading.ok) return {};
    const strip = reading.value;
    const asked = { notebook: unnamed(notebook), strip, own: ownLayouts(device) };
    const link = writeStripAddress(asked);
    return { page: "strip", hash: writeStripAddress({ strip }), link };
  },
  setups: (file, { notebook, device }) => {
    const reading = readSetup(file);
    if (!reading.ok) return {};
    const setup = reading.value;
    const asked = { notebook: unnamed(notebook), setup, own: ownLayouts(device) };
    const link = writeSetupAddress(asked);
    const hash = writeSetupAddress({ setup });
    return { page: "setup", hash, ...(link.length <= LONGEST_ADDRESS && { link }) };
  },
};
