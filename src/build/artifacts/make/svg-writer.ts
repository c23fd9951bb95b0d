/** Writes drawings as SVG where there is no browser. */
import { createSVGWindow } from "svgdom";
import { createSvgWriter, type WriteSvg } from "../../../draw/svg/write-svg.ts";

/** A writer with a window of its own. */
export function openSvgWriter(): WriteSvg {
  return createSvgWriter(createSVGWindow());
}
