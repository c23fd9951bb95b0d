/** What measuring bars in a photo is asked, and what its script gives to a page that runs it without a worker. */
import type { BarsFound } from "../../../../src/photo/bars-found.ts";
import type { Focal } from "../../../../src/photo/camera-over.ts";
import type { Grey } from "../../../../src/photo/grey.ts";
import type { PhotoStep } from "../photo/run-aside.ts";

export interface BarsQuestion {
  readonly photo: Grey;
  /** What the camera says of itself. */
  readonly focal?: Focal;
}

export interface BarsMeasurePart {
  steps(asked: BarsQuestion): Iterable<PhotoStep<BarsFound>>;
}

declare global {
  interface Window {
    readonly spanbookBarsMeasure?: BarsMeasurePart;
  }
}
