/** How much the sheet is stretched, from the four sides of a card of known size that lies on it: least squares with what is known before. */
import { ANY_FOCAL, type CameraOver, cameraOver, focalFrom, type Stretch } from "./camera-over.ts";
import {
  CARD_START,
  type CardLines,
  cardNumbers,
  cardResiduals,
  type SeenSheet,
} from "./card-model.ts";
import { type Fitted, leastMisfit } from "./least-misfit.ts";

const ROUNDS = 2;

export interface SolvedCard {
  readonly stretch: Stretch;
  /** Standard deviations of the stretch. */
  readonly off: Stretch;
  /** Squares of all that is off, each in its own deviation; three degrees of freedom. */
  readonly misfit: number;
  readonly camera: CameraOver;
}

/** Nothing where the lines do not say one answer. */
export function solveCard(lines: CardLines, sheet: SeenSheet): SolvedCard | undefined {
  const focalBy = (stretch: Stretch) => focalFrom(sheet.view, stretch, sheet.focal ?? ANY_FOCAL);
  let stretch: Stretch = { x: 1, y: 1 };
  let fitted: Fitted | undefined = { numbers: CARD_START, off: [], misfit: 0 };
  // What the view tells of the camera depends a little on the stretch that is sought.
  for (let round = 0; round < ROUNDS; round++) {
    const known = { stretch, focal: focalBy(stretch) };
    fitted = leastMisfit(fitted.numbers, cardResiduals(lines, sheet, known));
    if (!fitted) return undefined;
    ({ stretch } = cardNumbers(fitted.numbers));
  }
  const camera = cameraOver(sheet.view, stretch, Math.exp(focalBy(stretch).log));
  const { stretch: off } = cardNumbers(fitted.off);
  return camera && { stretch, off, misfit: fitted.misfit, camera };
}
