/** A drawing's file as a part of an HTML page. */

/** HTML knows SVG's namespace by itself, so the drawing is put in as it is but for that. */
export function inlineSvg(file: string): string {
  return file.replace(' xmlns="http://www.w3.org/2000/svg"', "").trim();
}
