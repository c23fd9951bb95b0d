/** A word at the top of a page, on what its address says. */
import { makeElement } from "./make-element.ts";
import { partOf } from "./parts.ts";

export interface Notice {
  clear(): void;
  /** The address cannot be read: why, and what is shown instead. */
  broken(what: string, instead: string): void;
  /** Something came with the address, and one's own is still there. */
  visit(words: string, back: () => void): void;
  say(words: string): void;
}

/** The page's notice; nothing is said until there is something to say. */
export function openNotice(page: ParentNode): Notice {
  const place = partOf(page, "notice");
  const show = (...content: readonly (Node | string)[]) => {
    place.replaceChildren(...content);
    place.hidden = content.length === 0;
  };
  return {
    clear: () => show(),
    broken: (what, instead) => show(`The address of this page cannot be read. ${what} ${instead}`),
    visit: (words, back) => {
      const mine = makeElement("button", { type: "button" }, "Show mine");
      mine.addEventListener("click", back);
      show(`${words} `, mine);
    },
    say: (words) => show(words),
  };
}
