/** What the tests read of a font, beside what the printing reads. */
declare module "fontkit" {
  export interface Font {
    readonly postscriptName: string;
    readonly unitsPerEm: number;
    glyphForCodePoint(codePoint: number): Glyph;
  }
}
