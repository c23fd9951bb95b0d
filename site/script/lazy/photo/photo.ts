/** The part that counts a notebook's dots from a photo, in the page alone: loaded when somebody asks for it. */
import type { Grey } from "../../../../src/photo/grey.ts";
import { COPY, FINER_COPY, isSure } from "../../../../src/photo/photo-count.ts";
import { photoReport } from "../../../../src/view/photo/photo-numbers.ts";
import { ownAddress } from "../../ui/load-script.ts";
import { saveFile } from "../../ui/save-file.ts";
import type { Counted } from "../photo-count/photo-count-part.ts";
import { countedView } from "./counted-view.ts";
import { showPhotoFields } from "./photo-fields.ts";
import type { PhotoPart, PhotoWork } from "./photo-part.ts";
import { type PhotoLook, photoButton } from "./run-photo.ts";

const own = ownAddress();

const HOW =
  "Lay the notebook open at a blank page, with all of the page and a little of the table in the picture, and hold the phone upright above it. The photo stays on this device: it is neither sent nor kept.";

function look(work: PhotoWork): PhotoLook<Grey, Counted> {
  return {
    longest: COPY,
    finer: { longest: FINER_COPY, isSure: ({ count }) => isSure(count) },
    turns: true,
    words: {
      doing: "Counting",
      stop: "Stop counting",
      stopped: "Counting was stopped.",
      failed: "The photo could not be counted: a part of this page is missing.",
    },
    asking: ({ grey }) => ({
      ...{ own, script: "photo-count.js", asked: grey },
      steps: (photo) => window.spanbookPhotoCount?.steps(photo),
    }),
    show: ({ canvas, grey }, counted) => ({
      elements: countedView(work, canvas, counted),
      buttons: [
        photoButton("Save what was found", () =>
          saveFile("photo-count", "json", photoReport(grey, counted.count)),
        ),
      ],
    }),
  };
}

const part: PhotoPart = { open: (work) => showPhotoFields(work.place, [HOW], look(work)) };

Object.assign(window, { spanbookPhoto: part });
