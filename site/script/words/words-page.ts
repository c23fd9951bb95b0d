/** Changes the words of a pattern on its page: its labels as fields, and a copy of one's own with what is typed there. */
import { openDevice } from "../device/device.ts";
import { readerPart } from "../lazy/reader/reader-part.ts";
import { ownAddress, scriptLoader } from "../ui/load-script.ts";
import { partOf } from "../ui/parts.ts";
import { bindWords } from "./words-form.ts";

const script = ownAddress();
const load = scriptLoader(script);
const device = openDevice(window, script);
const part = document.querySelector<HTMLDetailsElement>('details[data-part="change-words"]');

if (part) {
  part.hidden = false;
  part.addEventListener("toggle", () => part.open && void open(part), { once: true });
}

async function open(place: HTMLElement): Promise<void> {
  const { pattern = "" } = place.dataset;
  try {
    const [reader] = await Promise.all([readerPart(window, load), load("../fit/recipe/texts.js")]);
    const texts = window.spanbookTexts ?? {};
    bindWords(place, {
      reader,
      device,
      pattern,
      text: texts[pattern] ?? "",
      taken: Object.keys(texts),
      go: (slug) => location.assign(recipeAddress(place, slug)),
    });
  } catch (error) {
    console.error(error);
    partOf(place, "words-wait").textContent =
      "The words could not be opened: a part of this page is missing.";
  }
}

/** The recipe page on the copy, for the notebook and the days that this page shows. */
function recipeAddress({ dataset }: HTMLElement, slug: string): string {
  const { page = "", recipe = "" } = dataset;
  const here = recipe
    .replace(/^#/, "")
    .split("&")
    .filter((each) => !each.startsWith("from="));
  return `${page}#${[...here, `mine=${slug}`].join("&")}`;
}
