/** The desk's fields: what to start from, for which notebook, and the name of the file. */
import type { FieldIssue } from "../../../src/issue/facts/field-issue.ts";
import { isSlug } from "../../../src/source/slug.ts";
import { isSameGrid } from "../../../src/view/fields/name-notebook.ts";
import { slugFault } from "../../../src/view/fields/slug-for.ts";
import type { Hold } from "../ui/disable-buttons.ts";
import { fieldOf, fillForm, showFaults } from "../ui/form.ts";
import { partOf, theOne } from "../ui/parts.ts";
import type { RecipeTexts } from "./initial-recipe.ts";
import type { RecipeStore, RecipeState } from "./recipe-store.ts";

interface Asks {
  readonly texts: () => Promise<RecipeTexts>;
  readonly say: (words: string) => void;
  /** A file without a name that will do is not saved. */
  readonly hold: Hold;
}

/** Keeps the fields and the desk the same. */
export function bindRecipeForm(page: ParentNode, bench: RecipeStore, { texts, say, hold }: Asks): void {
  const form = theOne(page, '[data-part="desk-fields"]', HTMLFormElement);
  const note = partOf(page, "file-note");
  form.addEventListener("submit", (event) => event.preventDefault());
  // The file's name stands apart from the form, so the fields are listened to one by one.
  const nameFile = bindFileName(form, bench, hold);
  bindStart(form, bench, { texts, say, nameFile });
  bindNotebook(form, bench);
  bench.tell((state) => {
    note.textContent = bench.shelf.slugs.has(nameOf(state))
      ? "A pattern of the book has this name: in its folder, this file takes its place."
      : "";
  });
}

/** The name that the file is saved under: the recipe's own where it can be read. */
function nameOf({ draft, result }: RecipeState): string {
  return result.ok ? result.recipe.slug : draft.slug;
}

/** The file's name, and a function that puts another one into the field. */
function bindFileName(form: HTMLFormElement, bench: RecipeStore, hold: Hold): (name: string) => void {
  const field = fieldOf(form, "slug");
  /** The last name that would do; another one on the desk came from elsewhere and is put into its field. */
  let { slug } = bench.state().draft;
  const judge = (issues: readonly FieldIssue[]) => {
    showFaults(form, issues);
    hold(form, issues);
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
    bench.change({ slug });
  });
  bench.tell(({ draft, result }) => {
    if (draft.slug !== slug) nameFile(draft.slug);
    if (result.ok) field.setAttribute("placeholder", result.recipe.slug);
  });
  return nameFile;
}

interface StartAsks extends Pick<Asks, "texts" | "say"> {
  readonly nameFile: (name: string) => void;
}

/** The recipe to start from; none is named any more when the text has changed. */
function bindStart(
  form: HTMLFormElement,
  bench: RecipeStore,
  { texts, say, nameFile }: StartAsks,
): void {
  const field = fieldOf(form, "from");
  /** The text that was started from last. */
  let taken: string | undefined;
  const take = async (slug: string) => {
    try {
      const text = (await texts())[slug];
      if (text === undefined) return;
      taken = text;
      nameFile("");
      bench.change({ text, slug: "" });
    } catch {
      say("The recipe could not be loaded: a part of this page is missing.");
    }
  };
  field.addEventListener("input", () => void take(field.value));
  bench.tell(({ draft }) => {
    if (draft.text !== taken) fillForm(form, { from: "" });
  });
}

/** The book's notebook; where none is chosen, the one that lay on the desk first. */
function bindNotebook(form: HTMLFormElement, bench: RecipeStore): void {
  const field = fieldOf(form, "notebook");
  const { notebooks } = bench.shelf;
  const { notebook: own } = bench.state().draft;
  field.addEventListener("input", () => {
    const chosen = notebooks.find((one) => one.slug === field.value);
    bench.change({ notebook: chosen ? { ...chosen, title: "", slug: "", body: "" } : own });
  });
  bench.tell(({ draft }) => {
    const twin = notebooks.find((one) => isSameGrid(draft.notebook, one));
    fillForm(form, { notebook: twin?.slug ?? "" });
  });
}
