/** What counting a photo tells while it goes on, and what its script gives to a page that runs it without a worker. */
import type { Grey } from "../../../../src/photo/grey.ts";
import type { PaperCorners } from "../../../../src/photo/measure-paper.ts";
import type { PhotoCount } from "../../../../src/photo/photo-count.ts";

export type CountingStep =
  | { readonly kind: "part"; readonly part: number }
  | {
      readonly kind: "done";
      readonly count: PhotoCount;
      /** Where the paper's corners seem to be. */
      readonly corners?: PaperCorners;
    };

export interface PhotoCountPart {
  steps(photo: Grey): Iterable<CountingStep>;
}

declare global {
  interface Window {
    readonly spanbookPhotoCount?: PhotoCountPart;
  }
}
