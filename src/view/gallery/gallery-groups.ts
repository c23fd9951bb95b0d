/** Which cards of the gallery stand in its page from the start, so that a book of any size opens as quickly as a small one. */
import type { PurposeGroup } from "../pattern/pattern-cards.ts";

/** So many fill the first screen of most readers. Their pictures are half of what the page weighs. */
export const FIRST_CARDS = 16;

/** A purpose with the cards that stand in the page. */
export interface GalleryGroup extends PurposeGroup {
  /** How many cards follow them: empty sheets, which the page's script fills when they are wanted. */
  readonly rest: number;
}

/** The first cards of the book stay where they are; those behind them are only counted. */
export function galleryGroups(groups: readonly PurposeGroup[]): readonly GalleryGroup[] {
  let left = FIRST_CARDS;
  return groups.map((group) => {
    const cards = group.cards.slice(0, left);
    left -= cards.length;
    return { ...group, cards, rest: group.cards.length - cards.length };
  });
}
