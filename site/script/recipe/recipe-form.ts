/** The desk's fields: what to start from, for which notebook, and the name of the file. */
import type { FieldIssue } from "../../../src/issue/facts/field-issue.ts";
import { isSlug } from "../../../src/source/slug.ts";
import { isSameGrid } from "../../../src/view/fields/name-notebook.ts";
import { slugFault } from "../../../src/view/fields/slug-for.ts";
import type { Hold } from "../ui/disable-buttons.ts";
import { fieldOf, fillForm, showFaults } from "../ui/form.ts";
import { partOf, theOne } from "../ui/parts.ts";
import type { RecipeTexts } from "./initial-recipe.ts";
import type { DeskBench, OnDesk } from "./recipe-store.ts";

interface Asks {
  readonly texts: () => Promise<RecipeTexts>;
  readonly say: (words: string) => void;
  /** A file without a name that will do is not saved. */
  readonly hold: Hold;
}

/** Keeps the fields and the desk the same. */
export function bindDeskForm(page: ParentNode, bench: DeskBench, { texts, say, hold }: Asks): void {
  const form = theOne(page, '[data-part="desk-fields"]', HTMLFormElement);
  const note = partOf(page, "file-note");
  form.addEventListener("submit", (event) => event.preventDefault());
  // The file's name stands apart from the form, so the fields are listened to one by one.
  const nameFile = bindFileName(form, bench, hold);
  bindStart(form, bench, { texts, say, nameFile });
  bindNotebook(form, bench);
  bench.tell((lying) => {
    note.textContent = bench.shelf.slugs.has(nameOf(lying))
      ? "A pattern of the book has this name: in its folder, this file takes its place."
      : "";
  });
}

/** The name that the file is saved under: the recipe's own where it can be read. */
function nameOf({ desk, result }: OnDesk): string {
  return result.ok ? result.recipe.slug : desk.slug;
}

/** The file's name, and a function that puts another one into the field. */
function bindFileName(form: HTMLFormElement, bench: DeskBench, hold: Hold): (name: string) => void {
  const field = fieldOf(form, "slug");
  /** The last name that would do; another one on the desk came from elsewhere and is put into its field. */
  let { slug } = bench.lying().desk;
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
  bench.tell(({ desk, result }) => {
    if (desk.slug !== slug) nameFile(desk.slug);
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
  bench: DeskBench,
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
  bench.tell(({ desk }) => {
    if (desk.text !== taken) fillForm(form, { from: "" });
  });
}

/** The book's notebook; where none is chosen, the one that lay on the desk first. */
function bindNotebook(form: HTMLFormElement, bench: DeskBench): void {
  const field = fieldOf(form, "notebook");
  const { notebooks } = bench.shelf;
  const { notebook: own } = bench.lying().desk;
  field.addEventListener("input", () => {
    const chosen = notebooks.find((one) => one.slug === field.value);
    bench.change({ notebook: chosen ? { ...chosen, title: "", slug: "", body: "" } : own });
  });
  bench.tell(({ desk }) => {
    const twin = notebooks.find((one) => isSameGrid(desk.notebook, one));
    fillForm(form, { notebook: twin?.slug ?? "" });
  });
}
