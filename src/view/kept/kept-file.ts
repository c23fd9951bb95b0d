/** A thing that is kept on a device: the file that a content folder has of it, by its path there. */
import type { TextFile } from "../../issue/facts/reading.ts";
import { isSlug, slugOf } from "../../source/slug.ts";

/** The kinds of things of which several are kept: the folders of a content folder. */
export const KEPT_KINDS = ["patterns", "notebooks", "strips", "setups"] as const;
export type KeptKind = (typeof KEPT_KINDS)[number];

/** A path in a content folder. */
export type KeptPath = `${KeptKind}/${string}.md`;

export interface KeptFile extends TextFile {
  readonly path: KeptPath;
}

/** The path of a thing, by its kind and its file name without the ending. */
export function keptPath<Kind extends KeptKind>(kind: Kind, slug: string): `${Kind}/${string}.md` {
  return `${kind}/${slug}.md`;
}

/** The kind of the thing at a path. */
export function kindOf(path: KeptPath): KeptKind {
  return KEPT_KINDS.find((kind) => path.startsWith(`${kind}/`)) ?? "patterns";
}

/** The path that a name is; nothing where it is none of a kept file. */
export function asKeptPath(name: string): KeptPath | undefined {
  const kind = KEPT_KINDS.find((one) => name.startsWith(`${one}/`));
  const slug = slugOf(name);
  return kind && isSlug(slug) && name === keptPath(kind, slug) ? keptPath(kind, slug) : undefined;
}
