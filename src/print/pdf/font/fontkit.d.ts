/** What the printing uses of fontkit, which comes without types. Lengths are in units of the font. */
declare module "fontkit" {
  export interface Font {
    readonly postscriptName: string;
    readonly unitsPerEm: number;
    readonly ascent: number;
    readonly descent: number;
    readonly capHeight: number;
    readonly xHeight: number;
    /** In degrees. */
    readonly italicAngle: number;
    readonly bbox: {
      readonly minX: number;
      readonly minY: number;
      readonly maxX: number;
      readonly maxY: number;
    };
    hasGlyphForCodePoint(codePoint: number): boolean;
    glyphForCodePoint(codePoint: number): Glyph;
    layout(text: string): GlyphRun;
    createSubset(): Subset;
  }

  /** A font of some of the glyphs. The glyph 0 is always in it. */
  export interface Subset {
    /** The glyph's number in it; its parts come along. */
    includeGlyph(glyph: number): number;
    encode(): Uint8Array;
  }

  /** A text as glyphs, from left to right. */
  export interface GlyphRun {
    readonly direction: "ltr" | "rtl";
    readonly glyphs: readonly Glyph[];
    readonly positions: readonly GlyphPosition[];
  }

  export interface Glyph {
    readonly id: number;
    readonly advanceWidth: number;
    /** The characters that it stands for. */
    readonly codePoints: readonly number[];
  }

  export interface GlyphPosition {
    readonly xAdvance: number;
    readonly xOffset: number;
    readonly yOffset: number;
  }

  /** Throws where the bytes are no font. */
  export function create(bytes: Uint8Array): Font;
}
