/** The desk's fields: what to start from, for which notebook, and the name of the file. */
import { isSameGrid } from "../fit/name-notebook.ts";
import { isSlug } from "../fit/slug-for.ts";
import { fieldOf, fillForm, showFaults } from "../page/form.ts";
import { partOf, theOne } from "../page/parts.ts";
import type { DeskBench } from "./desk-bench.ts";
import type { RecipeTexts } from "./start-desk.ts";

/** Keeps the fields and the desk the same. */
export function bindDeskForm(page: ParentNode, bench: DeskBench, texts: RecipeTexts): void {
  const form = theOne(page, '[data-part="desk-fields"]', HTMLFormElement);
  const note = partOf(page, "file-note");
  const { shelf } = bench;
  const { notebook: own } = bench.lying().desk;
  form.addEventListener("submit", (event) => event.preventDefault());
  form.addEventListener("input", (event) => {
    if (event.target === fieldOf(form, "from")) takeFrom();
    else if (event.target === fieldOf(form, "notebook")) takeNotebook();
    else takeSlug();
  });
  bench.tell(({ desk, result }) => {
    const twin = shelf.notebooks.find((one) => isSameGrid(desk.notebook, one));
    const [from = ""] = Object.keys(texts).filter((slug) => texts[slug] === desk.text);
    fillForm(form, { notebook: twin?.slug ?? "", from });
    if (isSlug(fieldOf(form, "slug").value) || desk.slug !== "")
      fillForm(form, { slug: desk.slug });
    if (result.ok) fieldOf(form, "slug").setAttribute("placeholder", result.recipe.slug);
    const name = result.ok ? result.recipe.slug : desk.slug;
    note.textContent = shelf.slugs.has(name)
      ? "A pattern of the book has this name: in its folder, this file takes its place."
      : "";
  });

  function takeFrom(): void {
    const text = texts[fieldOf(form, "from").value];
    if (text !== undefined) bench.change({ text, slug: "" });
  }

  function takeNotebook(): void {
    const slug = fieldOf(form, "notebook").value;
    const chosen = shelf.notebooks.find((one) => one.slug === slug);
    bench.change({ notebook: chosen ? { ...chosen, title: "", slug: "", body: "" } : own });
  }

  function takeSlug(): void {
    const slug = fieldOf(form, "slug").value.trim();
    const isGood = slug === "" || isSlug(slug);
    showFaults(form, isGood ? [] : [{ field: "slug", kind: "no-file-name" }]);
    if (isGood) bench.change({ slug });
  }
}
