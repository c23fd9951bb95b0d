/** The lists of what is kept, and what can be done with each: open, rename, save, send, remove and take back. */
import { sayKept } from "../../../src/issue/words/say-kept.ts";
import { slugOf } from "../../../src/source/slug.ts";
import { KEPT_KINDS, type KeptFile, type KeptKind } from "../../../src/view/kept/kept-file.ts";
import type { KeptName } from "../device/device.ts";
import { keptSlugs } from "../device/kept-files.ts";
import { keepMine } from "../device/my-notebook.ts";
import type { FolderBook, FolderPart, KeptView } from "../lazy/folder/folder-part.ts";
import { makeElement } from "../ui/make-element.ts";
import { partOf } from "../ui/parts.ts";
import { saveFile } from "../ui/save-file.ts";
import { copyKeptLink } from "./copy-kept-link.ts";
import { renamingForm } from "./renaming-form.ts";

export interface Listing {
  readonly part: FolderPart;
  readonly around: FolderBook;
  readonly say: (words: string) => void;
}

/** What was removed since the page was opened, and can be taken back. */
interface Removed {
  readonly view: KeptView;
  readonly back: () => void;
}

/** A list that can be shown again whenever something has changed; `shown` is told each time. */
export function keptList(
  page: Document,
  listing: Listing,
  shown: () => void,
): { readonly show: () => void } {
  const removed = new Map<string, Removed>();
  const show = () => {
    showAll(page, { ...listing, removed, show });
    shown();
  };
  return { show };
}

interface Rows extends Listing {
  readonly removed: Map<string, Removed>;
  readonly show: () => void;
}

function showAll(page: Document, rows: Rows): void {
  const views = rows.part.views(rows.around);
  for (const kind of KEPT_KINDS) {
    const own = views.filter((view) => view.kind === kind);
    const gone = [...rows.removed].filter(([, { view }]) => view.kind === kind);
    partOf(page, `kept-${kind}`).replaceChildren(
      ...own.map((view) => row(page, view, rows)),
      ...gone.map(([key, one]) => removedRow(key, one, rows)),
    );
    partOf(page, `no-${kind}`).hidden = own.length + gone.length > 0;
  }
}

const OF_KIND: Readonly<Record<KeptKind, string>> = {
  patterns: "layout",
  notebooks: "notebook",
  strips: "strip",
  setups: "set-up",
};

function row(page: Document, view: KeptView, rows: Rows): HTMLElement {
  const { part, around, say, show } = rows;
  const { title, file, entry, kind } = view;
  const place = makeElement("li", {});
  const button = (words: string, act: () => void) => {
    const unseen = makeElement("span", { class: "unseen" }, ` ${title}`);
    const made = makeElement("button", { type: "button" }, words, unseen);
    made.addEventListener("click", act);
    return made;
  };
  const rename = () =>
    place.append(
      renamingForm(place, title, (next) => {
        const named = part.retitled(file, next);
        if (typeof named === "string") return named;
        around.device.set(named.path, named.text);
        show();
        focusTitle(page, named);
        return undefined;
      }),
    );
  const keep = () => {
    around.device.set(file.path, file.text);
    show();
    say(sayKept(title, around.device.persists()));
    focusTitle(page, file);
  };
  const address = addressOf(page, view.page);
  const copyLink = () => void copyKeptLink(place, view, { address, say });
  place.append(
    titleOf(page, view, rows),
    makeElement(
      "div",
      { class: "doing" },
      ...(entry
        ? [button(`Keep as a ${OF_KIND[kind]}`, keep)]
        : [button("Rename", rename), button("Make a copy", () => makeCopy(page, view, rows))]),
      button("Save file", () => saveFile(slugOf(file.path), "md", file.text)),
      ...(view.page ? [button("Copy link", copyLink)] : []),
      button("Remove", () => remove(page, view, rows)),
    ),
  );
  return place;
}

function makeCopy(page: Document, { file, title, kind }: KeptView, rows: Rows): void {
  const { part, around, say, show } = rows;
  const ofBook = kind === "patterns" ? Object.keys(around.texts) : [];
  const copy = part.copiedFile(file, title, [...ofBook, ...keptSlugs(around.device, kind)]);
  around.device.set(copy.path, copy.text);
  show();
  say(sayKept(`${title} (copy)`, around.device.persists()));
  focusTitle(page, copy);
}

function titleOf(page: Document, view: KeptView, { around }: Rows): HTMLElement {
  const { title, entry, isInUse, hash = "", kind } = view;
  const notes = [
    ...(isInUse ? ["your notebook"] : []),
    ...(entry === "recipe" ? ["on the recipe page"] : []),
    ...(entry === "strip" ? ["your strip"] : []),
    ...(entry === "setup" ? ["on the set-up page"] : []),
  ];
  const name = view.page
    ? makeElement("a", { href: addressOf(page, view.page) + (entry ? "" : hash) }, title)
    : makeElement("b", {}, title);
  // A notebook that is opened is the keeper's from then on.
  if (kind === "notebooks")
    name.addEventListener("click", () => keepMine(page, around.device, hash));
  return makeElement(
    "div",
    { class: "kept-title", id: `kept-${kind}-${slugOf(view.file.path)}` },
    name,
    ...(notes.length > 0 ? [" ", makeElement("span", { class: "quiet" }, notes.join(", "))] : []),
  );
}

function addressOf(page: Document, kind: KeptView["page"]): string {
  return kind === undefined ? "" : (partOf(page, "kept-page").dataset[kind] ?? "");
}

function focusTitle(page: Document, { path }: KeptFile): void {
  const [kind] = path.split("/");
  page.querySelector<HTMLElement>(`#kept-${kind}-${slugOf(path)} :is(a, b)`)?.focus();
}

/** What lies in use is more than its file: all of it comes back as it was. */
function remove(page: Document, view: KeptView, rows: Rows): void {
  const { removed, around, show } = rows;
  const names: readonly KeptName[] =
    view.entry === undefined
      ? [view.file.path]
      : view.entry === "notebook"
        ? ["notebook", "book-notebook"]
        : [view.entry];
  const before = names.map((name) => [name, around.device.get(name)] as const);
  for (const name of names) around.device.remove(name);
  const key = view.entry ?? view.file.path;
  removed.set(key, {
    view,
    back: () => {
      for (const [name, text] of before) if (text !== undefined) around.device.set(name, text);
    },
  });
  show();
  page.querySelector<HTMLElement>(`[data-back="${CSS.escape(key)}"]`)?.focus();
}

function removedRow(key: string, { view, back }: Removed, rows: Rows): HTMLElement {
  const undo = makeElement("button", { type: "button", "data-back": key }, "Undo");
  undo.append(makeElement("span", { class: "unseen" }, ` the removal of ${view.title}`));
  undo.addEventListener("click", () => {
    rows.removed.delete(key);
    back();
    rows.show();
    focusTitle(document, view.file);
  });
  return makeElement(
    "li",
    { class: "quiet" },
    makeElement("span", { class: "kept-title" }, `“${view.title}” is removed.`),
    makeElement("div", { class: "doing" }, undo),
  );
}
