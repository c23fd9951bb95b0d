/** The recipe page's fields: what to start from, for which notebook, and the name of the file. */

import type { FieldIssue } from "../../../src/issue/facts/field-issue.ts";
import { isSlug } from "../../../src/source/slug.ts";
import { isSameGrid, unnamed } from "../../../src/view/fields/name-notebook.ts";
import { slugFault } from "../../../src/view/fields/slug-for.ts";
import type { DisabledButtons } from "../ui/disable-buttons.ts";
import { fieldOf, fillForm, showErrors } from "../ui/form.ts";
import { partOf, theOne } from "../ui/parts.ts";
import type { RecipeTexts } from "./initial-recipe.ts";
import type { RecipeState, RecipeStore } from "./recipe-store.ts";

interface Asks {
  readonly texts: () => Promise<RecipeTexts>;
  readonly say: (words: string) => void;
  /** A layout of one's own, as it is kept. */
  readonly own: (slug: string) => string | undefined;
  /** A file without a name that will do is not saved. */
  readonly disable: DisabledButtons;
}

/** Keeps the fields and the recipe page the same. */
export function bindRecipeForm(
  page: ParentNode,
  store: RecipeStore,
  { texts, say, own, disable }: Asks,
): void {
  const form = theOne(page, '[data-part="recipe-fields"]', HTMLFormElement);
  const note = partOf(page, "file-note");
  form.addEventListener("submit", (event) => event.preventDefault());
  // The file's name stands apart from the form, so the fields are listened to one by one.
  const nameFile = bindFileName(form, store, disable);
  bindStart(form, store, { texts, say, own, nameFile });
  bindNotebook(form, store);
  store.subscribe((state) => {
    note.textContent = store.catalogue.slugs.has(nameOf(state))
      ? "A pattern of the book has this name: in its folder, this file takes its place."
      : "";
  });
}

/** The name that the file is saved under: the recipe's own where it can be read. */
function nameOf({ draft, result }: RecipeState): string {
  return result.ok ? result.recipe.slug : draft.slug;
}

/** The file's name, and a function that puts another one into the field. */
function bindFileName(
  form: HTMLFormElement,
  store: RecipeStore,
  disable: DisabledButtons,
): (name: string) => void {
  const field = fieldOf(form, "slug");
  /** The last name that would do; another one on the recipe page came from elsewhere and is put into its field. */
  let { slug } = store.state().draft;
  const judge = (issues: readonly FieldIssue[]) => {
    showErrors(form, issues);
    disable(form, issues);
  };
  const nameFile = (name: string) => {
    slug = name;
    fillForm(form, { slug });
    judge([]);
  };
  nameFile(slug);
  field.addEventListener("input", () => {
    const typed = field.value.trim();
    const isGood = typed === "" || isSlug(typed);
    judge(isGood ? [] : [slugFault("slug", typed)]);
    if (!isGood) return;
    slug = typed;
    store.update({ slug });
  });
  store.subscribe(({ draft, result }) => {
    if (draft.slug !== slug) nameFile(draft.slug);
    if (result.ok) field.setAttribute("placeholder", result.recipe.slug);
  });
  return nameFile;
}

interface StartAsks extends Pick<Asks, "texts" | "say" | "own"> {
  readonly nameFile: (name: string) => void;
}

/** The recipe to start from; none is named any more when the text has changed. */
function bindStart(
  form: HTMLFormElement,
  store: RecipeStore,
  { texts, say, own, nameFile }: StartAsks,
): void {
  const field = fieldOf(form, "from");
  /** The text that was started from last. */
  let taken: string | undefined;
  const take = async (chosen: string) => {
    try {
      const mine = mineIn(chosen);
      const text = mine === undefined ? (await texts())[chosen] : own(mine);
      if (text === undefined) return;
      taken = text;
      const slug = mine ?? "";
      nameFile(slug);
      store.update({ text, slug });
    } catch {
      say("The recipe could not be loaded: a part of this page is missing.");
    }
  };
  field.addEventListener("input", () => void take(field.value));
  store.subscribe(({ draft }) => {
    if (draft.text !== taken) fillForm(form, { from: "" });
  });
}

/** Layouts of one's own stand in the list of starts by this before their names. */
export const MINE = "mine/";

function mineIn(chosen: string): string | undefined {
  return chosen.startsWith(MINE) ? chosen.slice(MINE.length) : undefined;
}

/** The book's notebook; where none is chosen, the one that lay on the recipe page first. */
function bindNotebook(form: HTMLFormElement, store: RecipeStore): void {
  const field = fieldOf(form, "notebook");
  const { notebooks } = store.catalogue;
  const { notebook: own } = store.state().draft;
  field.addEventListener("input", () => {
    const chosen = notebooks.find((one) => one.slug === field.value);
    store.update({ notebook: chosen ? unnamed(chosen) : own });
  });
  store.subscribe(({ draft }) => {
    const twin = notebooks.find((one) => isSameGrid(draft.notebook, one));
    fillForm(form, { notebook: twin?.slug ?? "" });
  });
}
