/** The problems of a recipe as a list: each place can be gone to, each has the build's own words. */
import type { Issue } from "../../../src/issue/facts/issue.ts";
import type { Place } from "../../../src/issue/facts/place.ts";
import type { Said } from "../../../src/issue/words/said.ts";
import { sayCount } from "../../../src/issue/words/say-count.ts";
import { codeParagraph, makeElement } from "../ui/make-element.ts";

/** More at once would only bury the first ones. */
const MOST_SHOWN = 20;

interface ListQuestion {
  readonly issues: readonly Issue[];
  readonly say: (issue: Issue) => Said;
  readonly goTo: (place: Place) => void;
}

/** Sorted by place, as in the build's report. */
export function issueItems({ issues, say, goTo }: ListQuestion): readonly HTMLElement[] {
  const sorted = [...issues].sort((a, b) => a.at.line - b.at.line || a.at.column - b.at.column);
  const shown = sorted.slice(0, MOST_SHOWN).map((issue) => {
    const { sentence, hint } = say(issue);
    return makeElement(
      "li",
      {},
      placeElement(issue.at, goTo),
      codeParagraph(sentence),
      ...(hint ? [codeParagraph(hint, "hint")] : []),
    );
  });
  const rest = sorted.length - shown.length;
  if (rest <= 0) return shown;
  return [
    ...shown,
    makeElement("li", { class: "quiet" }, `… and ${sayCount(rest, "more problem")}.`),
  ];
}

/** A problem of the file as a whole has no place to go to. */
function placeElement(place: Place, goTo: (place: Place) => void): HTMLElement {
  if (place.width === 0) return makeElement("b", {}, "The whole file");
  const words = `Line ${place.line}, column ${place.column}`;
  const button = makeElement("button", { type: "button", class: "to-place" }, words);
  button.addEventListener("click", () => goTo(place));
  return button;
}

/** What an editor shows at the place: a sentence and its hint, without back quotes. */
export function spokenWords({ sentence, hint }: Said): string {
  return [sentence, ...(hint ? [hint] : [])].join("\n").replaceAll("`", "");
}
