/** One entry of the list of pages: a grip, its name, what it gives, its fields, and signs to press; a block has a list of its own. */
import type { SetupEntry } from "../../../src/recipe/setup-recipe.ts";
import { type EntryPath, pathIn } from "../../../src/view/setup/edit-setup.ts";
import { makeElement } from "../ui/make-element.ts";
import { signButton } from "../ui/sign-button.ts";
import { bordersField, timesField } from "./entry-fields.ts";
import type { SetupStore } from "./setup-store.ts";

export interface Rows {
  readonly store: SetupStore;
  readonly step: (path: EntryPath, by: 1 | -1) => void;
  readonly drop: (path: EntryPath) => void;
}

/** The entry's element; what depends on the notebook is put into it later. */
export function entryElement(entry: SetupEntry, path: EntryPath, rows: Rows): HTMLElement {
  const { store, step, drop } = rows;
  const title = entryTitle(entry, store);
  const place = (part: string, kind: string) => {
    const made = makeElement("p", { class: kind, "data-entry": part });
    made.hidden = true;
    return made;
  };
  const inner =
    entry.kind === "each"
      ? [
          makeElement(
            "ol",
            { class: "order", "aria-label": title },
            ...entry.pages.map((one, index) => entryElement(one, pathIn(path, index), rows)),
          ),
        ]
      : [];
  const fault = makeElement("p", { class: "fault", id: `times-${path}-fault` });
  fault.hidden = true;
  return makeElement(
    "li",
    { "data-slug": path, class: entry.kind === "each" ? "block" : "" },
    makeElement("span", { class: "grip", "aria-hidden": "true" }, "⠿"),
    makeElement(
      "span",
      { class: "name" },
      makeElement(
        "span",
        {},
        title,
        " ",
        makeElement("small", { class: "quiet numbers", "data-entry": "pages" }),
      ),
    ),
    ...fieldsOf(entry, path, rows),
    signButton(["up", "↑", `Move ${title} up`], false, () => step(path, -1)),
    signButton(["down", "↓", `Move ${title} down`], false, () => step(path, 1)),
    signButton(["drop", "×", `Take ${title} out`], false, () => drop(path)),
    ...borders(entry, path, rows),
    fault,
    place("fault", "fault"),
    place("notes", "quiet small"),
    ...inner,
  );
}

/** What an entry is called. */
export function entryTitle(entry: SetupEntry | undefined, store: SetupStore): string {
  if (!entry) return "";
  if (entry.kind === "each") return `Each ${entry.each}`;
  return store.layout(entry.pattern)?.title ?? entry.pattern;
}

function fieldsOf(entry: SetupEntry, path: EntryPath, { store }: Rows): readonly HTMLElement[] {
  if (entry.kind === "each") return [];
  const layout = store.layout(entry.pattern);
  return layout && !layout.dates ? [timesField(path, layout.title)] : [];
}

/** Weeks lie across the ends of months; what always ends with the days has no border to choose. */
function borders(entry: SetupEntry, path: EntryPath, { store }: Rows): readonly HTMLElement[] {
  const unit = entry.kind === "each" ? entry.each : store.layout(entry.pattern)?.dates?.span;
  const isOutermost = !path.includes(".");
  const mayChoose =
    unit !== undefined && unit !== "day" && (isOutermost || entry.borders !== "both");
  return mayChoose ? [bordersField(path, entryTitle(entry, store), unit)] : [];
}
