/** What the fit page says of patterns on a notebook that is filled into its form. */
import type { Page } from "playwright-core";
import type { Notebook } from "../../src/notebook/notebook.ts";
import { fieldsOf } from "../../src/view/fields/notebook-fields.ts";

/**
 * Fills the whole form in, then draws some patterns, all where none are named; what the page keeps for other programs
 * each time, by pattern.
 */
export function plansInPage(
  page: Page,
  notebook: Notebook,
  patterns?: readonly string[],
): Promise<Record<string, string>> {
  const fields = { ...fieldsOf(notebook), title: notebook.title, slug: notebook.slug };
  return page.evaluate(
    ([filled, chosen]) => {
      const form = document.querySelector<HTMLFormElement>('[data-part="notebook"]');
      const pattern = document.querySelector<HTMLSelectElement>("#pattern");
      if (!form || !pattern) throw new Error("the page has no form");
      const fill = (name: string, text: string) => {
        const field = form.elements.namedItem(name);
        if (field instanceof HTMLInputElement || field instanceof HTMLSelectElement)
          field.value = text;
      };
      for (const [name, text] of Object.entries(filled)) fill(name, text);
      for (const size of ["width", "height"] as const) fill(size, filled[size]);
      form.querySelector("#dots-across")?.dispatchEvent(new Event("input", { bubbles: true }));
      const slugs = chosen ?? [...pattern.options].map(({ value }) => value);
      return Object.fromEntries(
        slugs.map((slug) => {
          pattern.value = slug;
          pattern.dispatchEvent(new Event("input", { bubbles: true }));
          return [slug, document.querySelector("#plan-data")?.textContent ?? ""];
        }),
      );
    },
    [fields, patterns] as const,
  );
}
