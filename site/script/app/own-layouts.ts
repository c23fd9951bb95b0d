/** Layouts of the keeper's own for pages that draw more than one: those that are kept on the device, and those that an address carries. */
import { marginClashes } from "../../../src/recipe/margin-clashes.ts";
import { slugOf } from "../../../src/source/slug.ts";
import { layoutsInAddress, type PackedLayout } from "../../../src/view/address/carried-layouts.ts";
import { packText, unpackText } from "../../../src/view/address/recipe-address.ts";
import type { Catalogue } from "../../../src/view/catalogue.ts";
import { keptPath } from "../../../src/view/kept/kept-file.ts";
import type { OwnLayout } from "../../../src/view/strip/strip-result.ts";
import type { Device } from "../device/device.ts";
import { keptText } from "../device/kept-entry.ts";
import { keptFiles } from "../device/kept-files.ts";
import { type ReaderPart, readerPart } from "../lazy/reader/reader-part.ts";

export interface OwnLayouts {
  /** Of an address; each goes before one of the same name that is kept. */
  carriedBy(hash: string): Promise<readonly OwnLayout[]>;
  /** Of the device: its files, and what came with the strip that is kept and is no file here. */
  kept(): Promise<readonly OwnLayout[]>;
}

interface Sources {
  readonly device: Device;
  readonly catalogue: Catalogue;
  readonly load: (name: string) => Promise<void>;
}

/** Nothing is loaded where there is nothing to read. What cannot be read, or has the name of a pattern of the book, is none. */
export function openOwnLayouts(window: Window, { device, catalogue, load }: Sources): OwnLayouts {
  const layoutsOf = async (found: readonly Written[]): Promise<readonly OwnLayout[]> => {
    const meant = found.filter(
      ({ slug }, index) =>
        !catalogue.carried.has(slug) && found.findIndex((one) => one.slug === slug) === index,
    );
    if (meant.length === 0) return [];
    const reader = await readerPart(window, load);
    return meant.flatMap((written) => layoutOf(written, reader, catalogue));
  };
  const carried = (hash: string) => layoutsInAddress(hash).flatMap(unpacked);
  return {
    carriedBy: (hash) => layoutsOf(carried(hash)),
    kept: () =>
      layoutsOf([
        ...carried(keptText(device, "strip") ?? ""),
        ...keptFiles(device, "patterns").map(({ path, text }) => ({ slug: slugOf(path), text })),
      ]),
  };
}

/** Is the layout kept as a file here, as it is? */
export function isKeptFile(device: Device, { slug, text }: OwnLayout): boolean {
  return device.get(keptPath("patterns", slug)) === text;
}

/** All of both; where two have a name, the first. */
export function joined(
  first: readonly OwnLayout[],
  second: readonly OwnLayout[],
): readonly OwnLayout[] {
  return [...first, ...second.filter(({ slug }) => !first.some((one) => one.slug === slug))];
}

type Written = Pick<OwnLayout, "slug" | "text">;

function unpacked({ slug, packed }: PackedLayout): readonly Written[] {
  const text = unpackText(packed);
  return text === undefined ? [] : [{ slug, text }];
}

function layoutOf(
  { slug, text }: Written,
  reader: ReaderPart,
  { notebooks }: Catalogue,
): readonly OwnLayout[] {
  const reading = reader.readRecipe({ path: keptPath("patterns", slug), text });
  if (!reading.ok || marginClashes(reading.value, notebooks).length > 0) return [];
  return [{ slug, text, packed: packText(text), recipe: reading.value }];
}
