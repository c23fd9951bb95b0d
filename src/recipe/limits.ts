/** What a recipe and a book may hold at most, and how far a printer may be off: the numbers that the tables of keys and the fields share. */
export const LIMITS = {
  /** Characters of a title, a label or a tag. */
  text: 200,
  /** Characters of a `same` name. */
  name: 40,
  /** Different `same` names of a pattern. */
  names: 24,
  /** Steps of a track, its least and its most. */
  steps: 400,
  /** Steps of a gap or a margin. */
  space: 400,
  share: 10_000,
  /** Tracks of a split, `repeat` written out. */
  tracks: 200,
  /** Splits inside one another. */
  depth: 8,
  /** Areas of a recipe, as written. */
  areas: 2_000,
  /** Pages or spreads of `otherwise`. */
  attempts: 40,
  tags: 40,
  /** Folders that a book builds on, as `book.yaml` names them. */
  packs: 100,
  /** Groups of words in `words.yaml`, and words in one of them. */
  wordGroups: 1_000,
  wordsAlike: 40,
} as const;

/** A printer that is off by more than a tenth does not print at actual size. */
export const STRETCH = { min: 0.9, max: 1.1 } as const;
