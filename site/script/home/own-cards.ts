/** The front page's cards on the keeper's own notebook, from when they come near; they follow what is said of it above them. */
import { type OwnCards, openOwnCards } from "../app/own-cards.ts";
import type { Device } from "../device/device.ts";
import { openOnNotebook, openOnOwn } from "../device/open-on-notebook.ts";
import { keptNotebook, ownNotebook } from "../device/own-notebook.ts";
import { openSight } from "../ui/in-view.ts";

/** What it gives is to be told when another notebook was kept. */
export function bindHomeCards(
  window: Window,
  device: Device,
  load: (name: string) => Promise<void>,
): () => void {
  const { document: page } = window;
  const elements = new Map(
    [...page.querySelectorAll<HTMLElement>("[data-pattern]")].map((card) => [
      card.dataset.pattern ?? "",
      card,
    ]),
  );
  let cards: OwnCards | undefined;
  let said = "";
  let isNear = false;
  // Where it cannot be worked out, the cards have no pictures; each leads to a page that says so.
  const show = () => void cards?.show().catch(() => undefined);
  const follow = () => {
    const own = ownNotebook(page, device);
    const chosen = keptNotebook(page, device);
    if ((own?.said ?? "") === said) return;
    said = own?.said ?? "";
    cards?.hide();
    if (own) openOnOwn(page, own);
    else if (chosen) openOnNotebook(page, chosen);
    cards = own && openOwnCards(window, { own, load, elements, told: () => undefined });
    if (isNear) show();
  };
  follow();
  const [first] = elements.values();
  if (first)
    openSight(new Map([[first, true]]), () => {
      isNear = true;
      show();
    });
  return follow;
}
