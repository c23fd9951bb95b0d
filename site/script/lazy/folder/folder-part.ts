/** What the part that reads, packs and opens kept things gives to its page, once it is loaded. */
import type { CatalogueData } from "../../../../src/view/catalogue.ts";
import type { KeptFile, KeptKind } from "../../../../src/view/kept/kept-file.ts";
import type { Meeting } from "../../../../src/view/kept/meet-kept.ts";
import type { copiedFile, renamedTogether } from "../../../../src/view/kept/rename-file.ts";
import type { PickedFile } from "../../../../src/view/kept/sort-files.ts";
import type { OwnLayout } from "../../../../src/view/strip/strip-result.ts";
import type { Device } from "../../device/device.ts";
import type { KeptSetup } from "../uses/uses-part.ts";

/** The book, as its pages have it, and the patterns as written. */
export interface FolderBook {
  readonly book: CatalogueData | undefined;
  readonly texts: Readonly<Record<string, string>>;
  readonly device: Device;
}

/** A kept thing as the page lists it. */
export interface KeptView {
  readonly kind: KeptKind;
  readonly file: KeptFile;
  readonly title: string;
  /** The page that opens it, and the address's part from # on; nothing where no page shows such things. */
  readonly page?: "fit" | "recipe" | "strip" | "setup";
  readonly hash?: string;
  /** What another device needs to open it; left out where it is too long for a link. */
  readonly link?: string;
  /** The entry of the device where it lies in use, beside the files. */
  readonly entry?: "notebook" | "strip" | "setup" | "recipe";
  /** Is it the keeper's notebook? */
  readonly isInUse: boolean;
}

export interface Opened extends Meeting {
  /** Why something is not taken: the build's report, and a sentence for each zip that is refused. */
  readonly reports: readonly string[];
  readonly ignored: readonly string[];
}

export interface FolderPart {
  /** Everything that is kept, files and what lies in use, by kind and name. */
  views(around: FolderBook): readonly KeptView[];
  /** The file under another title, or why it cannot have it. */
  retitled(file: KeptFile, title: string): KeptFile | string;
  readonly copiedFile: typeof copiedFile;
  readonly renamedTogether: typeof renamedTogether;
  /** Set-ups that are kept here, each once. */
  setups(around: FolderBook): readonly KeptSetup[];
  /** The book's own, from their texts by slug. */
  bookSetups(around: FolderBook, texts: Readonly<Record<string, string>>): readonly KeptSetup[];
  layouts(device: Device): readonly OwnLayout[];
  open(picked: readonly PickedFile[], around: FolderBook): Opened;
  /** A zip of all, and the titles of what would not build and stays out. */
  zip(around: FolderBook): { readonly bytes: Uint8Array; readonly leftOut: readonly string[] };
}

declare global {
  interface Window {
    readonly spanbookFolder?: FolderPart;
  }
}

/** The part, loaded if it is not there yet. Rejects where its script cannot be loaded. */
export async function folderPart(
  window: Window,
  load: (name: string) => Promise<void>,
): Promise<FolderPart> {
  await load("folder.js");
  if (window.spanbookFolder) return window.spanbookFolder;
  throw new Error("the part that opens folders is not what was expected");
}
