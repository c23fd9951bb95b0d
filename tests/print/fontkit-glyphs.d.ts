/** What the tests read of a glyph, beside what the printing reads. */
declare module "fontkit" {
  export interface Font {
    getGlyph(id: number): {
      readonly path: { toSVG(): string };
      readonly advanceWidth: number;
    };
  }
}
