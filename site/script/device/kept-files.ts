/** Things of which several are kept, each as the file that a content folder has of it. */
import { slugOf } from "../../../src/source/slug.ts";
import { asKeptPath, type KeptFile, type KeptKind } from "../../../src/view/kept/kept-file.ts";
import type { Device } from "./device.ts";

/** All that is kept of a kind, by name. */
export function keptFiles(device: Device, kind: KeptKind): readonly KeptFile[] {
  const paths = device.names().flatMap((name) => asKeptPath(name) ?? []);
  return paths
    .filter((path) => path.startsWith(`${kind}/`))
    .sort((a, b) => (slugOf(a) < slugOf(b) ? -1 : 1))
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
