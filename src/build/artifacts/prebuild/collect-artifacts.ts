/** Puts artifacts into their caches as they are made, whoever made them, and tells when all are there. */
import type { Cache } from "../cache/cache.ts";
import type { Caches } from "../caches.ts";
import type { Missing, MissingArtifacts } from "./find-missing.ts";
import type { Made } from "./make-artifacts.ts";

export interface Collection {
  keep(made: Made): void;
  /** Is fulfilled when no artifact is missing. */
  readonly isWhole: Promise<void>;
}

/** Starts empty. */
export function openCollection(
  { strips, setups, patterns }: MissingArtifacts,
  caches: Caches,
): Collection {
  let left = strips.length + setups.length + patterns.length;
  let tell = () => {};
  const isWhole = new Promise<void>((resolve) => {
    tell = resolve;
  });
  if (left === 0) tell();
  return {
    isWhole,
    keep: (made) => {
      if (made.kind === "strip") put(caches.strips, strips[made.index], made.artifact);
      else if (made.kind === "setup") put(caches.setups, setups[made.index], made.artifact);
      else put(caches.patterns, patterns[made.index], made.artifact);
      left -= 1;
      if (left === 0) tell();
    },
  };
}

function put<Artifact>(
  cache: Cache<Artifact>,
  missing: Missing<unknown> | undefined,
  artifact: Artifact,
): void {
  if (!missing) throw new RangeError("nobody has asked for this artifact");
  cache.put(missing.sources, artifact);
}
