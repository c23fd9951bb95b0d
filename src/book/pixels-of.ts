/** How large a drawing in true size is on a screen. */

/** In whole pixels: CSS counts 96 to the inch of 25.4 mm (CSS Values and Units, absolute lengths). */
export function pixelsOf({ width, height }: { readonly width: number; readonly height: number }): {
  readonly width: number;
  readonly height: number;
} {
  const toPixels = (mm: number) => Math.round((mm * 96) / 25.4);
  return { width: toPixels(width), height: toPixels(height) };
}
