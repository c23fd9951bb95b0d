/** Copies the link that opens a kept thing on another device. */
import type { KeptView } from "../lazy/folder/folder-part.ts";
import { copyLink } from "../ui/copy-link.ts";
import { makeElement } from "../ui/make-element.ts";

interface Copying {
  /** Of the page that opens it. */
  readonly address: string;
  readonly say: (words: string) => void;
}

/** From disk a browser may not give the clipboard: then the link stands in the row, selected. */
export async function copyKeptLink(
  place: HTMLElement,
  view: KeptView,
  { address, say }: Copying,
): Promise<void> {
  if (view.link === undefined) return say("It is too long for a link: save its file instead.");
  const page = place.ownerDocument;
  const value = new URL(address + view.link, page.location.href).href;
  const link = makeElement("input", {
    class: "kept-link",
    type: "text",
    readonly: true,
    value,
    "aria-label": `Link to ${view.title}`,
  });
  place.querySelector(".kept-link")?.remove();
  place.append(link);
  await copyLink(link, say);
  if (page.activeElement !== link) link.remove();
}
