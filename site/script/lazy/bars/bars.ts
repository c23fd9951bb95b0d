/** The part that measures the bars of a test sheet from a photo, in the page alone: loaded when somebody asks for it. */
import { BARS_HOW } from "../../../../src/issue/words/say-bars.ts";
import type { BarsFound } from "../../../../src/photo/bars-found.ts";
import { barsReport } from "../../../../src/view/photo/bars-numbers.ts";
import { ownAddress } from "../../ui/load-script.ts";
import { saveFile } from "../../ui/save-file.ts";
import type { BarsQuestion } from "../bars-measure/bars-measure-part.ts";
import { showPhotoFields } from "../photo/photo-fields.ts";
import { type PhotoLook, photoButton } from "../photo/run-photo.ts";
import type { BarsPart, BarsWork } from "./bars-part.ts";
import { measuredView } from "./measured-view.ts";

const own = ownAddress();

/** About eight pixels for a millimetre, where the picture shows twice the square of dots. */
const LONGEST = 3_000;

function look(work: BarsWork): PhotoLook<BarsQuestion, BarsFound> {
  return {
    longest: LONGEST,
    turns: false,
    words: {
      doing: "Measuring",
      stop: "Stop measuring",
      stopped: "Measuring was stopped.",
      failed: "The photo could not be measured: a part of this page is missing.",
    },
    asking: ({ grey: photo, focal }) => ({
      ...{ own, script: "bars-measure.js" },
      asked: { photo, ...(focal && { focal }) },
      steps: (asked) => window.spanbookBarsMeasure?.steps(asked),
    }),
    show: ({ canvas, grey }, found) => ({
      elements: measuredView(work, canvas, found),
      buttons: [
        photoButton("Save what was found", () =>
          saveFile("photo-bars", "json", barsReport(grey, found)),
        ),
      ],
    }),
  };
}

const part: BarsPart = {
  open: (work) => showPhotoFields(work.place, [BARS_HOW.photo, BARS_HOW.trust], look(work)),
};

Object.assign(window, { spanbookBars: part });
