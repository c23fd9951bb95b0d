/** A set-up on a notebook, finished: its drawings, its files, and the words that depend on the notebook. */
import { stripScene } from "../../draw/strip/strip-scene.ts";
import type { WriteSvg } from "../../draw/svg/write-svg.ts";
import type { DatedEvent } from "../../events/events-in.ts";
import { setupJson } from "../../setup/setup-json.ts";
import { setupStrip } from "../../setup/setup-strip.ts";
import { stripJsonText } from "../../strip/strip-json.ts";
import { eventLines } from "../events/event-lines.ts";
import type { Planner } from "../planner.ts";
import type { SetupPair, SetupView } from "./setup-view.ts";
import { setupWords } from "./setup-words.ts";
import { spreadViews } from "./spread-views.ts";
import { stripLeftOutLines } from "./strip-left-out.ts";

export interface SetupSources {
  readonly planner: Planner;
  readonly write: WriteSvg;
  /** On its days, from calendar files. */
  readonly events?: readonly DatedEvent[];
}

/** Works a set-up out for a notebook and draws its pages small. */
export function makeSetupView(
  pair: SetupPair,
  { planner, write, events = [] }: SetupSources,
): SetupView {
  const notebook = planner.notebook(pair.notebook);
  const setup = planner.setupOn(pair.setup, pair.notebook);
  const strip = setupStrip(setup, notebook);
  const { rule } = planner.when;
  return {
    setupJson: setupJson(setup),
    stripSvg: write(stripScene(strip)),
    stripJson: stripJsonText(strip),
    spreads: spreadViews(setup, { notebook, write, rule, events }),
    events: eventLines(events, rule),
    stripLeftOut: stripLeftOutLines(strip),
    ...setupWords(setup, { notebook, recipe: planner.recipe, rule }),
  };
}
