/** Which font prints which part of a line: the first that has the character; a space stays with what it follows. */
import { xmlText } from "../../../draw/svg/xml-text.ts";
import type { TextWeight } from "../../../draw/text-width.ts";
import type { FontLists } from "./print-font.ts";
import { directedParts } from "./text-direction.ts";

/** A part of a line in one font, in reading order. */
export interface FontRun {
  readonly text: string;
  /** Place in the list of fonts of the weight; none where no font has the characters. */
  readonly font: number | undefined;
  readonly isRightToLeft: boolean;
}

/** The runs of a line from left to right, cleaned as for the screen. Characters and their accents are joined where Unicode has them as one. */
export function fontRuns(line: string, weight: TextWeight, fonts: FontLists): readonly FontRun[] {
  return directedParts(xmlText(line).normalize("NFC")).flatMap(({ text, isRightToLeft }) => {
    const runs: { text: string; font: number | undefined; isRightToLeft: boolean }[] = [];
    for (const character of text) {
      const last = runs.at(-1);
      const font = character === " " && last ? last.font : fontOf(character, weight, fonts);
      if (last && last.font === font) last.text += character;
      else runs.push({ text: character, font, isRightToLeft });
    }
    return isRightToLeft ? runs.reverse() : runs;
  });
}

function fontOf(character: string, weight: TextWeight, fonts: FontLists): number | undefined {
  const codePoint = character.codePointAt(0) ?? 0;
  const index = fonts[weight].findIndex((font) => font.has(codePoint));
  return index === -1 ? undefined : index;
}
