/** The line of controls above the gallery, and the form that it is. */
import { type GalleryNames, readGalleryWords } from "../../../src/view/address/gallery-address.ts";
import { chosenCount, type GalleryQuery } from "../../../src/view/gallery/gallery-query.ts";
import { SORT_WORDS } from "../../../src/view/gallery/query-words.ts";
import { theOne } from "../ui/parts.ts";

export interface Controls {
  /** What they say now. */
  read(): GalleryQuery;
  /** Sets all of them; `notebook` is the one that is shown. */
  fill(state: GalleryQuery, notebook: string): void;
  /** Tells which control was changed, by the name of its field; the search by itself tells more often. */
  onChoice(tell: (name: string) => void): void;
  readonly search: HTMLInputElement;
}

/** The names of the fields are the keys of the address. */
export function openControls(page: Document, known: GalleryNames): Controls {
  const form = theOne(page, ".choose", HTMLFormElement);
  const search = theOne(form, "[name=find]", HTMLInputElement);
  const narrow = theOne(form, ".narrow", HTMLButtonElement);
  form.addEventListener("submit", (event) => event.preventDefault());
  narrow.addEventListener("click", () => {
    narrow.setAttribute("aria-expanded", `${narrow.getAttribute("aria-expanded") !== "true"}`);
  });
  return {
    search,
    read: () => readGalleryWords(wordsIn(form), known),
    fill: (state, notebook) => {
      if (search.value.trim() !== state.query) search.value = state.query;
      const words = { ...state, on: notebook };
      for (const field of form.querySelectorAll<Field>("select, input[type=radio]"))
        fillField(field, valuesOf(words));
      for (const box of form.querySelectorAll<HTMLInputElement>("input[type=checkbox]"))
        box.checked = state.purposes.some((purpose) => purpose === box.value);
      nameSort(form, state.query);
      const count = chosenCount(state);
      narrow.textContent = count === 0 ? "Filters" : `Filters (${count})`;
    },
    onChoice: (tell) => {
      form.addEventListener("change", ({ target }) => {
        if (isField(target) && target !== search) tell(target.name);
      });
    },
  };
}

type Field = HTMLInputElement | HTMLSelectElement;

function isField(target: EventTarget | null): target is Field {
  return target instanceof HTMLInputElement || target instanceof HTMLSelectElement;
}

/** Several purposes are one word of the address. */
function wordsIn(form: HTMLFormElement): URLSearchParams {
  const words = new URLSearchParams();
  const fields = new FormData(form);
  for (const name of new Set(fields.keys())) words.set(name, fields.getAll(name).join("."));
  return words;
}

function valuesOf({ on, tag, fit, pages, lines, sort }: GalleryQuery & { readonly on: string }) {
  return new Map(Object.entries({ on, tag, fit, pages, lines, sort }));
}

function fillField(field: Field, values: ReadonlyMap<string, string>): void {
  const value = values.get(field.name);
  if (value === undefined) return;
  if (field instanceof HTMLSelectElement) field.value = value;
  else field.checked = field.value === value;
}

/** Where something is searched for, the usual order is that of the search. */
function nameSort(form: HTMLFormElement, query: string): void {
  const usual = theOne(form, "[name=sort] option", HTMLOptionElement);
  usual.textContent = query === "" ? SORT_WORDS.purpose : "best match first";
}
