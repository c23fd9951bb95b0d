/** Puts artifacts into their caches as they are made, whoever made them, and tells when all are there. */
import type { Caches } from "../caches.ts";
import type { ArtifactSources, MissingArtifacts } from "./find-missing.ts";
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
  sources: ArtifactSources,
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
      const { index } = made;
      if (made.kind === "strip")
        caches.strips.put(sources.strip(asked(strips, index)), made.artifact);
      else if (made.kind === "setup")
        caches.setups.put(sources.setup(asked(setups, index)), made.artifact);
      else caches.patterns.put(sources.pattern(asked(patterns, index)), made.artifact);
      left -= 1;
      if (left === 0) tell();
    },
  };
}

function asked<Pair>(missing: readonly Pair[], index: number): Pair {
  const pair = missing[index];
  if (!pair) throw new RangeError("nobody has asked for this artifact");
  return pair;
}
