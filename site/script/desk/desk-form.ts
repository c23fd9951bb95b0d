/** The desk's fields: what to start from, for which notebook, and the name of the file. */
import type { FieldProblem } from "../../../src/problem/field-problem.ts";
import { isSlug } from "../../../src/written/slug.ts";
import { isSameGrid } from "../fit/name-notebook.ts";
import { slugFault } from "../fit/slug-for.ts";
import { fieldOf, fillForm, showFaults } from "../page/form.ts";
import type { Hold } from "../page/hold-buttons.ts";
import { partOf, theOne } from "../page/parts.ts";
import type { DeskBench } from "./desk-bench.ts";
import type { RecipeTexts } from "./start-desk.ts";

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
  const { shelf } = bench;
  const { notebook: own } = bench.lying().desk;
  /** The text that was started from last. */
  let taken: string | undefined;
  /** The last name that would do; another one on the desk came from elsewhere and is put into its field. */
  let { slug } = bench.lying().desk;
  nameFile(slug);
  form.addEventListener("submit", (event) => event.preventDefault());
  // The file's name stands apart from the form, so the fields are listened to one by one.
  fieldOf(form, "from").addEventListener("input", () => void takeFrom());
  fieldOf(form, "notebook").addEventListener("input", takeNotebook);
  fieldOf(form, "slug").addEventListener("input", takeSlug);
  bench.tell(({ desk, result }) => {
    const twin = shelf.notebooks.find((one) => isSameGrid(desk.notebook, one));
    if (desk.text !== taken) fillForm(form, { from: "" });
    fillForm(form, { notebook: twin?.slug ?? "" });
    if (desk.slug !== slug) nameFile(desk.slug);
    if (result.ok) fieldOf(form, "slug").setAttribute("placeholder", result.recipe.slug);
    const name = result.ok ? result.recipe.slug : desk.slug;
    note.textContent = shelf.slugs.has(name)
      ? "A pattern of the book has this name: in its folder, this file takes its place."
      : "";
  });

  async function takeFrom(): Promise<void> {
    const slug = fieldOf(form, "from").value;
    try {
      const text = (await texts())[slug];
      if (text === undefined) return;
      taken = text;
      nameFile("");
      bench.change({ text, slug: "" });
    } catch {
      say("The recipe could not be loaded: a part of this page is missing.");
    }
  }

  function takeNotebook(): void {
    const slug = fieldOf(form, "notebook").value;
    const chosen = shelf.notebooks.find((one) => one.slug === slug);
    bench.change({ notebook: chosen ? { ...chosen, title: "", slug: "", body: "" } : own });
  }

  function takeSlug(): void {
    const typed = fieldOf(form, "slug").value.trim();
    const isGood = typed === "" || isSlug(typed);
    judgeName(isGood ? [] : [slugFault("slug", typed)]);
    if (!isGood) return;
    slug = typed;
    bench.change({ slug });
  }

  function nameFile(name: string): void {
    slug = name;
    fillForm(form, { slug });
    judgeName([]);
  }

  function judgeName(problems: readonly FieldProblem[]): void {
    showFaults(form, problems);
    hold(form, problems);
  }
}
