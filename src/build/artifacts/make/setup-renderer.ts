/** Makes the artifacts of a book's set-ups, one after another. */
import { openPlanner } from "../../../view/planner.ts";
import { makeSetupView } from "../../../view/setup/make-setup-view.ts";
import type { SetupPair, SetupView } from "../../../view/setup/setup-view.ts";
import type { Content } from "../../content/load-content.ts";
import { setupEvents } from "./setup-events.ts";
import { openSvgWriter } from "./svg-writer.ts";

/** A renderer with a drawing window of its own. */
export function openSetupRenderer(content: Content): (pair: SetupPair) => SetupView {
  const sources = { planner: openPlanner(content), write: openSvgWriter() };
  return (pair) => makeSetupView(pair, { ...sources, events: setupEvents(pair.setup, content) });
}

/** Every set-up on every notebook, set-up by set-up. */
export function setupPairs({ notebooks, setups }: Content): readonly SetupPair[] {
  return setups.flatMap(({ slug: setup }) =>
    notebooks.map(({ slug: notebook }) => ({ setup, notebook })),
  );
}
