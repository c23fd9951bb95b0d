/** What the printing uses of fontkit, which comes without types. */
declare module "fontkit" {
  export interface Font {
    readonly postscriptName: string;
    readonly unitsPerEm: number;
    /** The glyphs met so far, each with the characters for which it was first met. */
    _glyphs: Record<number, unknown>;
    hasGlyphForCodePoint(codePoint: number): boolean;
  }

  /** Throws where the bytes are no font. */
  export function create(bytes: Uint8Array): Font;
}
