/** One pattern among all of the book: its picture, its name, how it comes out, and its place on the strip. */
import type { Recipe } from "../../../src/recipe/recipe.ts";
import type { StatusWords } from "../../../src/view/pattern/plan-status.ts";
import { makeElement } from "../ui/make-element.ts";

export interface Card {
  readonly slug: string;
  readonly element: HTMLElement;
  showStatus(status: StatusWords): void;
  /** The address of the picture, and its size in mm. */
  showPicture(address: string, width: number, height: number): void;
  /** Is it the one that is drawn large? */
  showDrawn(isDrawn: boolean): void;
  /** Does the keeper's strip carry it? */
  showCarried(isCarried: boolean): void;
}

export interface CardActions {
  readonly draw: (slug: string) => void;
  readonly carry: (slug: string) => void;
}

/** A card without a picture; the two buttons say whose they are to those who do not see the card. */
export function makeCard({ slug, title }: Recipe, { draw, carry }: CardActions): Card {
  const open = makeElement("button", { type: "button", class: "open" }, title);
  const state = makeElement("p", { class: "state" });
  const picture = makeElement("img", { class: "thumb", alt: "", width: "148", height: "210" });
  const place = makeElement("button", { type: "button", class: "place", "aria-pressed": "false" });
  const sign = makeElement("span", {});
  place.append(sign, makeElement("span", { class: "unseen" }, `: ${title}`));
  open.addEventListener("click", () => draw(slug));
  place.addEventListener("click", () => carry(slug));
  const element = makeElement(
    "li",
    { class: "card" },
    makeElement("h4", {}, open),
    state,
    makeElement("div", { class: "frame" }, picture),
    place,
  );
  picture.hidden = true;
  return {
    slug,
    element,
    showStatus: (status) => {
      element.dataset.state = status.state;
      element.classList.toggle("misfit", status.state === "misfit");
      state.className = { even: "state even", over: "state", misfit: "state short" }[status.state];
      state.textContent = status.words;
    },
    showPicture: (address, width, height) => {
      picture.width = Math.round(width);
      picture.height = Math.round(height);
      picture.src = address;
      picture.hidden = false;
    },
    showDrawn: (isDrawn) => {
      if (isDrawn) open.setAttribute("aria-current", "true");
      else open.removeAttribute("aria-current");
    },
    showCarried: (isCarried) => {
      place.setAttribute("aria-pressed", `${isCarried}`);
      sign.textContent = isCarried ? "On your strip" : "Add to strip";
    },
  };
}
