/** Drawings in the page, written by the build's own writer in the page's own window. */
import type { Scene } from "../../../src/draw/scene.ts";
import { createSvgWriter, type WriteSvg } from "../../../src/draw/svg/write-svg.ts";

export interface Draw {
  /** Shows a drawing in a place of the page. */
  show(place: Element, scene: Scene): void;
  /** The file that the build writes. */
  file: WriteSvg;
}

/** The writer escapes every text, so what it writes may be read as markup. */
export function openDraw(window: Window): Draw {
  const write = createSvgWriter(window);
  return {
    show: (place, scene) => {
      place.innerHTML = write(scene, "inline");
    },
    file: (scene, form) => write(scene, form),
  };
}

/** A drawing's file as the address of a picture. */
export function pictureAddress(svg: string): string {
  return `data:image/svg+xml,${encodeURIComponent(svg)}`;
}
