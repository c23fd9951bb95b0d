/** Shows only those patterns that come out as someone wants, and says how many there are. */
import { STALE_PATTERNS } from "../../../src/issue/words/say-stale.ts";
import { partOf } from "../ui/parts.ts";
import type { Card } from "./pattern-card.ts";

export interface CardFilter {
  /** Counts and filters again after the statuses have changed. */
  count(): void;
  /** Says that the cards are for an old notebook, until that is over and they are counted again. */
  age(isOld: boolean): void;
}

/** Which states each choice lets through. */
const STATES: Readonly<Record<string, readonly string[]>> = {
  all: ["even", "over", "misfit"],
  fits: ["even", "over"],
  even: ["even"],
};

/** The filter over some cards; it works from the first count on. */
export function bindCardFilter(page: ParentNode, cards: ReadonlyMap<string, Card>): CardFilter {
  const [summary, cardsPlace] = [partOf(page, "summary"), partOf(page, "cards")];
  const choices = [...page.querySelectorAll<HTMLInputElement>('input[name="cards"]')];
  const stateOf = ({ element }: Card) => element.dataset.state ?? "";
  const sift = () => {
    const wanted = STATES[choices.find(({ checked }) => checked)?.value ?? "all"] ?? [];
    for (const card of cards.values()) card.element.hidden = !wanted.includes(stateOf(card));
    for (const group of page.querySelectorAll<HTMLElement>(".group")) {
      group.hidden = group.querySelector(".card:not([hidden])") === null;
    }
  };
  for (const choice of choices) choice.addEventListener("change", sift);
  let isOld = false;
  return {
    age: (isNowOld) => {
      isOld = isNowOld;
      cardsPlace.classList.toggle("stale-cards", isOld);
      if (isOld) summary.textContent = STALE_PATTERNS;
    },
    count: () => {
      if (isOld) return sift();
      const states = [...cards.values()].map(stateOf);
      const fitting = states.filter((state) => state !== "misfit").length;
      const even = states.filter((state) => state === "even").length;
      summary.textContent = `${fitting} of ${states.length} fit this notebook, and ${even} of those leave nothing over.`;
      sift();
    },
  };
}
