/** What counting a photo comes to, and what its script gives to a page that runs it without a worker. */
import type { Grey } from "../../../../src/photo/grey.ts";
import type { PaperCorners } from "../../../../src/photo/measure-paper.ts";
import type { PhotoCount } from "../../../../src/photo/photo-count.ts";
import type { PhotoStep } from "../photo/run-aside.ts";

export interface Counted {
  readonly count: PhotoCount;
  /** Where the paper's corners seem to be. */
  readonly corners?: PaperCorners;
}

export interface PhotoCountPart {
  steps(photo: Grey): Iterable<PhotoStep<Counted>>;
}

declare global {
  interface Window {
    readonly spanbookPhotoCount?: PhotoCountPart;
  }
}
