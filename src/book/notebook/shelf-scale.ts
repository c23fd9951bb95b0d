/** At what size notebooks stand side by side: all at one scale, and the widest still beside another on a phone. */
import type { NotebookEntry } from "../entries.ts";

/** In CSS pixels. */
const WIDEST = 150;
const PER_MM = 0.8;

/** CSS pixels a millimetre. */
export function shelfScale(notebooks: readonly NotebookEntry[]): number {
  return Math.min(PER_MM, ...notebooks.map(({ width }) => WIDEST / width));
}
