/** The widths that the tests read from a font, beside what the printing reads. */
declare module "fontkit" {
  export interface Font {
    glyphForCodePoint(codePoint: number): { readonly advanceWidth: number };
  }
}
