/** Counting the dots from a photo: brought when somebody opens its part of the page. */
import { photoPart } from "../lazy/photo/photo-part.ts";
import { partOf, theOne } from "../ui/parts.ts";

interface Brings {
  readonly load: (name: string) => Promise<void>;
  readonly say: (words: string) => void;
}

/** What is counted is filled into the notebook's fields, as if it were typed. */
export function bindPhoto(window: Window, { load, say }: Brings): void {
  const { document } = window;
  const help = partOf(document, "photo");
  const form = theOne(document, '[data-part="notebook"]', HTMLFormElement);
  const bring = () => {
    help.removeEventListener("toggle", bring);
    photoPart(window, load).then(
      (part) => part.open({ place: partOf(help, "photo-work"), form, say }),
      () => {
        help.addEventListener("toggle", bring);
        say("Counting from a photo could not be loaded: a part of this page is missing.");
      },
    );
  };
  help.addEventListener("toggle", bring);
}
