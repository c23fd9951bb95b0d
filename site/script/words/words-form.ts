/** The fields of a pattern's words, and the copy that is kept of it. */
import { slugFor } from "../../../src/view/fields/slug-for.ts";
import { keptPath } from "../../../src/view/kept/kept-file.ts";
import type { Device } from "../device/device.ts";
import { keptSlugs } from "../device/kept-files.ts";
import type { ReaderPart } from "../lazy/reader/reader-part.ts";
import { makeElement } from "../ui/make-element.ts";
import { partOf, theOne } from "../ui/parts.ts";

interface Words {
  readonly reader: ReaderPart;
  readonly device: Device;
  readonly pattern: string;
  /** The recipe as written. */
  readonly text: string;
  /** Names that the copy may not have. */
  readonly taken: readonly string[];
  /** Opens the copy. */
  readonly go: (slug: string) => void;
}

/** Longer names of a label are refused by the reader, too. */
const LONGEST = 200;

/** Fills the form and opens it. Throws where the recipe has no text: the build gives one for each. */
export function bindWords(place: HTMLElement, words: Words): void {
  const { reader, device, pattern, text, go } = words;
  const reading = reader.readRecipe({ path: keptPath("patterns", pattern), text });
  if (!reading.ok) throw new Error(`the recipe ${pattern} cannot be read`);
  const form = theOne(place, "form", HTMLFormElement);
  const name = theOne(form, "#words-name", HTMLInputElement);
  name.value = `${reading.value.title} (mine)`;
  const labels = reader.writtenLabels(text);
  const fields = labels.map((label, index) => wordField(label, index));
  partOf(form, "words-fields").replaceChildren(...fields.map(({ field }) => field));
  partOf(form, "words-none").hidden = labels.length > 0;
  partOf(place, "words-wait").hidden = true;
  form.hidden = false;
  (fields[0]?.input ?? name).focus();
  const faults = partOf(form, "words-faults");
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    const title = name.value.trim();
    const next = new Map(
      labels.map((label, index) => [label, fields[index]?.input.value ?? label]),
    );
    const copy = reader.retyped(text, { title, labels: next });
    const taken = [...words.taken, ...keptSlugs(device, "patterns")];
    const slug = slugFor(title, { fallback: pattern, taken });
    const checked = reader.readRecipe({ path: keptPath("patterns", slug), text: copy });
    const said = checked.ok
      ? []
      : checked.issues.map((issue) => reader.sayIssue(issue).sentence.replaceAll("`", ""));
    faults.replaceChildren(...said.map((sentence) => makeElement("li", {}, sentence)));
    faults.hidden = checked.ok;
    if (!checked.ok) return;
    device.set(keptPath("patterns", slug), copy);
    if (device.persists()) go(slug);
    else {
      faults.replaceChildren(makeElement("li", {}, NOT_KEPT));
      faults.hidden = false;
    }
  });
}

const NOT_KEPT =
  "This browser keeps nothing for the book, so that the copy would be lost on the way to its page. “Edit this recipe” opens the recipe, which can be saved as a file.";

function wordField(label: string, index: number) {
  const id = `word-${index}`;
  const input = makeElement("input", {
    id,
    type: "text",
    value: label,
    maxlength: `${LONGEST}`,
    autocomplete: "off",
  });
  const field = makeElement(
    "div",
    { class: "field" },
    makeElement("label", { for: id }, label),
    input,
  );
  return { field, input };
}
