/** Things of which several are kept, each as the file that a content folder has of it. */
import type { TextFile } from "../../../src/issue/facts/reading.ts";
import { isSlug, slugOf } from "../../../src/source/slug.ts";
import { type Device, KEPT_KINDS, type KeptKind, type KeptPath } from "./device.ts";

/** A file by its path in a content folder. */
export interface KeptFile extends TextFile {
  readonly path: KeptPath;
}

/** The path of a thing, by its kind and its file name without the ending. */
export function keptPath(kind: KeptKind, slug: string): KeptPath {
  return `${kind}/${slug}.md`;
}

/** The path that a name is; nothing where it is none of a kept file. */
export function asKeptPath(name: string): KeptPath | undefined {
  const kind = KEPT_KINDS.find((one) => name.startsWith(`${one}/`));
  const slug = slugOf(name);
  return kind && isSlug(slug) && name === keptPath(kind, slug) ? keptPath(kind, slug) : undefined;
}

/** All that is kept of a kind, by name. */
export function keptFiles(device: Device, kind: KeptKind): readonly KeptFile[] {
  const paths = device.names().flatMap((name) => asKeptPath(name) ?? []);
  return paths
    .filter((path) => path.startsWith(`${kind}/`))
    .sort()
    .flatMap((path) => {
      const text = device.get(path);
      return text === undefined ? [] : [{ path, text }];
    });
}

/** The slugs under which things of a kind are kept. */
export function keptSlugs(device: Device, kind: KeptKind): readonly string[] {
  return keptFiles(device, kind).map(({ path }) => slugOf(path));
}

/** Tells when another tab has kept or removed a file. */
export function subscribeFiles(device: Device, show: () => void): void {
  device.subscribeAll((name) => {
    if (asKeptPath(name)) show();
  });
}
