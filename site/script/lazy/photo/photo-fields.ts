/** The fields by which a photo is taken, opened or dropped, and the place for what comes of it. */
import { makeElement } from "../../ui/make-element.ts";
import { type PhotoLook, runPhoto } from "./run-photo.ts";

/** Puts them into a place of the page, below words on how the photo is taken. */
export function showPhotoFields<Asked, Done>(
  place: HTMLElement,
  how: readonly string[],
  look: PhotoLook<Asked, Done>,
): void {
  const result = makeElement("div", { class: "photo-result" });
  let cancel = () => {};
  const start = (file: Blob, quarters = 0) => {
    cancel();
    cancel = runPhoto(file, quarters, { look, result, again: start });
  };
  place.replaceChildren(
    ...how.map((words) => makeElement("p", {}, words)),
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
