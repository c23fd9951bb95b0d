/** Takes pairs from an order's queues and makes their artifacts: in the build's own thread and in its workers alike. */
import type { Pair } from "../../../view/entries.ts";
import type { PatternView } from "../../../view/pattern/pattern-view.ts";
import type { SetupPair, SetupView } from "../../../view/setup/setup-view.ts";
import type { StripPair, StripView } from "../../../view/strip/strip-view.ts";
import type { Content } from "../../content/load-content.ts";
import { openPatternRenderer } from "../make/pattern-renderer.ts";
import { openSetupRenderer } from "../make/setup-renderer.ts";
import { openStripRenderer } from "../make/strip-renderer.ts";
import { takeFrom, type WorkQueue } from "../work-queue.ts";

export interface ArtifactOrder {
  readonly content: Content;
  readonly strips: WorkQueue<StripPair>;
  readonly setups: WorkQueue<SetupPair>;
  readonly patterns: WorkQueue<Pair>;
}

/** An artifact; `index` is its place in the queue. */
export type Made =
  | { readonly kind: "strip"; readonly index: number; readonly artifact: StripView }
  | { readonly kind: "setup"; readonly index: number; readonly artifact: SetupView }
  | { readonly kind: "pattern"; readonly index: number; readonly artifact: PatternView };

/** One after another until no strip is left to be taken. */
export function* makeStrips({ content, strips }: ArtifactOrder): Iterable<Made> {
  const renderer = openStripRenderer(content);
  for (const [index, pair] of takeFrom(strips))
    yield { kind: "strip", index, artifact: renderer(pair) };
}

/** One after another until no pattern is left to be taken. */
export function* makePatterns({ content, patterns }: ArtifactOrder): Iterable<Made> {
  const renderer = openPatternRenderer(content);
  for (const [index, pair] of takeFrom(patterns)) {
    yield { kind: "pattern", index, artifact: renderer(pair) };
  }
}

/** One after another until no set-up is left to be taken. */
export function* makeSetups({ content, setups }: ArtifactOrder): Iterable<Made> {
  const renderer = openSetupRenderer(content);
  for (const [index, pair] of takeFrom(setups))
    yield { kind: "setup", index, artifact: renderer(pair) };
}
