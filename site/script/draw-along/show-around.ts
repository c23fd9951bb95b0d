/** What lies around a pattern on its page, for another notebook than it was built for: the pattern itself on that notebook, first in the row, and patterns near it. */
import { usableSteps } from "../../../src/measure/grid-axis.ts";
import type { Notebook } from "../../../src/notebook/notebook.ts";
import type { Catalogue } from "../../../src/view/catalogue.ts";
import type { CardView, DatesPart } from "../lazy/dates/dates-part.ts";
import { openQueue } from "../ui/idle-queue.ts";
import { makeElement } from "../ui/make-element.ts";
import { theOne } from "../ui/parts.ts";

/** Shows them for a notebook, or as they were built; the engine comes with the first notebook. */
export type ShowAround = (asked?: AroundQuestion) => void;

interface AroundQuestion {
  readonly part: Pick<DatesPart, "cardView">;
  readonly catalogue: Catalogue;
  readonly pattern: string;
  readonly notebook: Notebook;
}

/** Remembers what was built. */
export function openAround(window: Window): ShowAround {
  const { document } = window;
  const queue = openQueue(window);
  const lineup = theOne(document, ".lineup", HTMLElement);
  const cards = [...document.querySelectorAll<HTMLElement>(".kin [data-pattern]")].map(openCard);
  const here = lineup.querySelector("[aria-current]");
  let first: HTMLElement | undefined;
  let last: Notebook | undefined;
  return (asked) => {
    if (asked?.notebook === last) return;
    last = asked?.notebook;
    first?.remove();
    setCurrent(here, asked === undefined);
    for (const card of cards) card.show();
    if (!asked) return;
    const { part, catalogue, pattern, notebook } = asked;
    const viewOf = (slug: string) =>
      part.cardView(catalogue.recipe(slug), notebook, catalogue.when);
    first = lineupEntry(viewOf(pattern), notebook);
    lineup.prepend(first);
    const waiting = [...cards];
    queue.put("around", () => {
      const card = waiting.shift();
      if (notebook === last) card?.show(viewOf(card.pattern));
      return waiting.length > 0;
    });
  };
}

function setCurrent(link: Element | null, isCurrent: boolean): void {
  if (isCurrent) link?.setAttribute("aria-current", "page");
  else link?.removeAttribute("aria-current");
  link?.parentElement?.classList.toggle("here", isCurrent);
}

/** Half a CSS pixel a millimetre, as the notebooks beside it. */
const PX_PER_MM = 0.5;

function lineupEntry({ state, picture }: CardView, notebook: Notebook): HTMLElement {
  const { src, width, height } = picture();
  const image = makeElement("img", {
    class: "thumb",
    alt: "",
    src,
    width: `${Math.round(width * PX_PER_MM)}`,
    height: `${Math.round(height * PX_PER_MM)}`,
  });
  const { across, down } = notebook.axes;
  return makeElement(
    "li",
    { class: "here" },
    makeElement("span", { "aria-current": "page" }, image, makeElement("b", {}, notebook.title)),
    makeElement("span", { class: "numbers" }, `${usableSteps(across)} × ${usableSteps(down)}`),
    makeElement("span", {}, ...stateWords(state)),
  );
}

/** As the build says it on its cards. */
function stateWords(state: CardView["state"]): readonly (Node | string)[] {
  if (state === "over") return ["\u00a0"];
  return state === "even"
    ? [makeElement("span", { class: "even" }, "Nothing left over")]
    : [makeElement("span", { class: "short" }, "Does not fit")];
}

interface Card {
  readonly pattern: string;
  /** Shows how it comes out, or what was built. */
  show(view?: CardView): void;
}

function openCard(card: HTMLElement): Card {
  const [words, picture] = [theOne(card, "p", HTMLElement), theOne(card, "img", HTMLImageElement)];
  const built = { words: [...words.childNodes], src: picture.getAttribute("src") ?? "" };
  const wasMisfit = card.classList.contains("misfit");
  let isBuilt = true;
  return {
    pattern: card.dataset.pattern ?? "",
    show: (view) => {
      if (!view && isBuilt) return;
      isBuilt = !view;
      words.replaceChildren(...(view ? stateWords(view.state) : built.words));
      picture.src = view?.picture().src ?? built.src;
      card.classList.toggle("misfit", view ? view.state === "misfit" : wasMisfit);
    },
  };
}
