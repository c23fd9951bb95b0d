/** A drawing as plain data in millimetres: written as SVG for the screen and as PDF for paper from one list. */
import type { Role } from "./role.ts";

/** A drawing. Its frame is the SVG viewBox; 0, 0 is the top left corner of the paper. */
export interface Scene {
  /** Made from slugs, so that ids inside one document never clash and never change. */
  readonly id: string;
  readonly title: string;
  readonly description: string;
  readonly frame: Frame;
  readonly marks: readonly Mark[];
  /** All stroke widths of the table times this; 1 where left out. A thumbnail is drawn with a broader pen. */
  readonly penScale?: number;
}

export interface Frame {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export type Mark = PathMark | TextMark;

/** Any number of lines and outlines of one role, in one path: SVG's cost is per element. */
export interface PathMark {
  readonly kind: "path";
  readonly role: Role;
  /** SVG path data in millimetres, made with `path-data.ts`: M, L, H, V, Z alone, all absolute. */
  readonly d: string;
  /** Instead of the role's own dash, in millimetres: the dot grid is a dash of length 0. */
  readonly dash?: readonly number[];
  /** Lane number (from 1) for the roles whose colour comes from a lane. */
  readonly lane?: number;
}

/** A line of text at a baseline point. */
export interface TextMark {
  readonly kind: "text";
  readonly role: Role;
  readonly x: number;
  readonly y: number;
  /** Font size in millimetres. */
  readonly size: number;
  readonly anchor: "start" | "middle" | "end";
  readonly text: string;
  /** Degrees clockwise about x, y; 0 where left out. */
  readonly turn?: number;
  readonly lane?: number;
}

/** In whole pixels: CSS counts 96 to the inch of 25.4 mm (CSS Values and Units, absolute lengths). */
export function pixelsOf({ width, height }: { readonly width: number; readonly height: number }): {
  readonly width: number;
  readonly height: number;
} {
  const toPixels = (mm: number) => Math.round((mm * 96) / 25.4);
  return { width: toPixels(width), height: toPixels(height) };
}
