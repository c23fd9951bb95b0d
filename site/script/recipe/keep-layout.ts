/** Keeps recipes of one's own by name, several of them, and lists them among what one can start from. */
import { sayKept } from "../../../src/issue/words/say-kept.ts";
import { writeAddress } from "../../../src/view/address/hash-params.ts";
import { slugFor } from "../../../src/view/fields/slug-for.ts";
import { keptPath } from "../../../src/view/kept/kept-file.ts";
import type { Device } from "../device/device.ts";
import { keptFiles, keptSlugs, subscribeFiles } from "../device/kept-files.ts";
import type { ReaderPart } from "../lazy/reader/reader-part.ts";
import { makeElement } from "../ui/make-element.ts";
import { onPress, partOf, theOne } from "../ui/parts.ts";
import { MINE } from "./recipe-form.ts";
import type { RecipeStore } from "./recipe-store.ts";

interface Keeping {
  readonly device: Device;
  readonly reader: ReaderPart;
  readonly say: (words: string) => void;
}

/**
 * A recipe that cannot be read is not kept as a layout; it stays on the page as it is. The result keeps it for those
 * that need it kept, and gives its name.
 */
export function bindKeepLayout(
  page: Document,
  store: RecipeStore,
  keeping: Keeping,
): () => string | undefined {
  const { device, say } = keeping;
  const taken = () => [...store.catalogue.slugs, ...keptSlugs(device, "patterns")];
  const show = () => {
    showKept(page, store, keeping);
    listOwn(page, keeping);
  };
  const keep = (isAnother: boolean): string | undefined => {
    const { result, draft } = store.state();
    if (!result.ok) {
      say("The recipe has problems: see the list below it.");
      return undefined;
    }
    const { slug: named, title } = result.recipe;
    const isOfBook = store.catalogue.slugs.has(named);
    const slug =
      isAnother || isOfBook ? slugFor(named, { fallback: "recipe", taken: taken() }) : named;
    device.set(keptPath("patterns", slug), draft.text);
    if (draft.slug !== slug) store.update({ slug });
    show();
    say(sayKept(title, device.persists()));
    return slug;
  };
  onPress(page, "keep-layout", () => void keep(false));
  onPress(page, "keep-another", () => void keep(true));
  store.subscribe(() => showKept(page, store, keeping));
  subscribeFiles(device, show);
  listOwn(page, keeping);
  return () => {
    const { result, draft } = store.state();
    const slug = result.ok ? result.recipe.slug : "";
    const isKept = slug !== "" && device.get(keptPath("patterns", slug)) === draft.text;
    return isKept ? slug : keep(false);
  };
}

function showKept(page: Document, store: RecipeStore, { device, reader }: Keeping): void {
  const { draft, result } = store.state();
  const slug = result.ok ? result.recipe.slug : draft.slug;
  const kept = slug === "" ? undefined : device.get(keptPath("patterns", slug));
  const isSame = kept === draft.text;
  const title = kept === undefined ? "" : titleOf(kept, slug, reader);
  partOf(page, "layout-kept").textContent = isSame ? `Kept on this device as “${title}”.` : "";
  const toSetup = theOne(page, '[data-part="to-setup"]', HTMLAnchorElement);
  toSetup.hidden = !isSame;
  toSetup.hash = writeAddress([["add", slug]]);
  for (const button of page.querySelectorAll<HTMLElement>('[data-do="keep-layout"]')) {
    button.hidden = isSame;
    button.textContent =
      kept === undefined ? "Keep as my layout" : `Keep the changes to “${title}”`;
  }
  for (const button of page.querySelectorAll<HTMLElement>('[data-do="keep-another"]'))
    button.hidden = kept === undefined || isSame;
}

/** The list of starts has one's own first. */
function listOwn(page: Document, { device, reader }: Keeping): void {
  const group = partOf(page, "own-layouts");
  const files = keptFiles(device, "patterns");
  group.hidden = files.length === 0;
  group.replaceChildren(
    ...files.map(({ path, text }) => {
      const slug = path.replace(/^.*\/|\.md$/g, "");
      return makeElement("option", { value: `${MINE}${slug}` }, titleOf(text, slug, reader));
    }),
  );
}

function titleOf(text: string, slug: string, reader: ReaderPart): string {
  const reading = reader.readRecipe({ path: keptPath("patterns", slug), text });
  return reading.ok ? reading.value.title : slug;
}
