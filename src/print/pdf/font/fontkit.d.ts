/** What the printing uses of fontkit, which comes without types. Lengths are in units of the font. */
declare module "fontkit" {
  export interface Font {
    hasGlyphForCodePoint(codePoint: number): boolean;
    layout(text: string): GlyphRun;
    createSubset(): unknown;
  }

  /** A text as glyphs, from left to right. */
  export interface GlyphRun {
    readonly direction: "ltr" | "rtl";
    readonly glyphs: readonly Glyph[];
    readonly positions: readonly GlyphPosition[];
    readonly advanceWidth: number;
  }

  export interface GlyphPosition {
    readonly xAdvance: number;
    readonly yAdvance: number;
    readonly xOffset: number;
    readonly yOffset: number;
  }

  export interface Glyph {
    readonly id: number;
    readonly advanceWidth: number;
    /** The characters that it stands for. */
    readonly codePoints: readonly number[];
  }

  /** Throws where the bytes are no font. */
  export function create(bytes: Uint8Array): Font;
}
