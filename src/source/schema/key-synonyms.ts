/** What people call a key that has another name here: words from drawing, from print and from style sheets. */

/** Each word with the keys that may be meant by it; the first that a group has is proposed. */
const OTHER_WORDS: Readonly<Record<string, readonly string[]>> = {
  split: ["columns", "tracks"],
  grid: ["columns"],
  cols: ["columns"],
  height: ["steps", "rows"],
  width: ["steps", "columns"],
  size: ["steps", "paper"],
  length: ["steps"],
  weight: ["share"],
  name: ["label", "title"],
  text: ["label"],
  heading: ["label", "title"],
  items: ["tracks"],
  areas: ["tracks"],
  number: ["count"],
  gutter: ["gap"],
  padding: ["margin"],
  rest: ["leftover"],
  lines: ["fill"],
  checks: ["fill"],
  squares: ["fill"],
  dots: ["fill"],
  numbers: ["fill"],
  blank: ["fill"],
  x: ["across"],
  y: ["down"],
  spacing: ["pitch", "gap"],
  address: ["url"],
};

/** The key of the group that is probably meant by a word that is no key. */
export function keyMeantBy(word: string, allowed: readonly string[]): string | undefined {
  const lower = word.toLowerCase();
  const keys = Object.hasOwn(OTHER_WORDS, lower) ? OTHER_WORDS[lower] : undefined;
  return keys?.find((key) => allowed.includes(key));
}
