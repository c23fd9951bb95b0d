/** What the drawings use of svgdom, which comes without types: a window with an empty SVG document. */
declare module "svgdom" {
  export function createSVGWindow(): Window & typeof globalThis;
}
