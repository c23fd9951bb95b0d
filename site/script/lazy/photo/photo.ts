/** The part that counts a notebook's dots from a photo, in the page alone: loaded when somebody asks for it. */
import { ownAddress } from "../../ui/load-script.ts";
import { makeElement } from "../../ui/make-element.ts";
import type { PhotoPart, PhotoWork } from "./photo-part.ts";
import { runPhoto } from "./run-photo.ts";

const own = ownAddress();

const HOW =
  "Lay the notebook open at a blank page, with all of the page and a little of the table in the picture, and hold the phone upright above it. The photo stays on this device: it is neither sent nor kept.";

function open(work: PhotoWork): void {
  const { place } = work;
  const result = makeElement("div", { class: "photo-result" });
  let cancel = () => {};
  const start = (file: Blob, quarters = 0) => {
    cancel();
    cancel = runPhoto(file, quarters, { own, work, result, again: start });
  };
  place.replaceChildren(
    makeElement("p", {}, HOW),
    fileField("photo-taken", "Take a photo", start, { capture: "environment" }),
    fileField("photo-file", "Or open one, or drop it here", start),
    result,
  );
  place.addEventListener("dragover", (event) => event.preventDefault());
  place.addEventListener("drop", (event) => {
    event.preventDefault();
    const dropped = event.dataTransfer?.files[0];
    if (dropped) start(dropped);
  });
}

function fileField(
  id: string,
  label: string,
  start: (file: Blob) => void,
  given: Readonly<Record<string, string>> = {},
): HTMLElement {
  const field = makeElement("input", { id, type: "file", accept: "image/*", ...given });
  field.addEventListener("change", () => {
    const picked = field.files?.[0];
    if (picked) start(picked);
    field.value = "";
  });
  return makeElement("div", { class: "field" }, makeElement("label", { for: id }, label), field);
}

const part: PhotoPart = { open };

Object.assign(window, { spanbookPhoto: part });
