/** The table by which a reader of a PDF turns codes back into characters (ISO 32000-1, 9.10.3). */

/** Most lines that a block may have. */
const BLOCK = 100;

/** The table for characters with the codes 1, 2, 3 and so on, of one byte. */
export function unicodeMap(characters: readonly string[]): string {
  const lines = characters.map(
    (character, code) => `<${hexOf(code + 1, 2)}> <${utf16(character)}>`,
  );
  const blocks = Array.from({ length: Math.ceil(lines.length / BLOCK) }, (_, index) => {
    const block = lines.slice(index * BLOCK, (index + 1) * BLOCK);
    return `${block.length} beginbfchar\n${block.join("\n")}\nendbfchar`;
  });
  return [
    "/CIDInit /ProcSet findresource begin 12 dict begin begincmap",
    "/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def",
    "/CMapName /Adobe-Identity-UCS def /CMapType 2 def",
    "1 begincodespacerange <00> <ff> endcodespacerange",
    ...blocks,
    "endcmap CMapName currentdict /CMap defineresource pop end end",
  ].join("\n");
}

function utf16(character: string): string {
  return Array.from({ length: character.length }, (_, index) =>
    hexOf(character.charCodeAt(index), 4),
  ).join("");
}

/** A number in hexadecimal digits, as PDF writes codes. */
export function hexOf(number: number, digits: number): string {
  return number.toString(16).padStart(digits, "0");
}
