/** A card that is seen exactly, through a camera written apart from the finder: where the camera was, and what the sheet's stretch is. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { BANK_CARD } from "../../src/measure/bank-card.ts";
import { ANY_FOCAL, cameraOver, focalFrom, type Stretch } from "../../src/photo/camera-over.ts";
import { besideCard, CARD_SIDES, type CardSide, edgeReach } from "../../src/photo/card-sides.ts";
import { fitView } from "../../src/photo/fit-view.ts";
import { latticeAt, type PlaneView } from "../../src/photo/plane-view.ts";
import { solveCard } from "../../src/photo/solve-card.ts";
import { CARD_PLACE, fromCardPlace, toCardPlace } from "../../src/photo/test-sheet.ts";
import { type PhoneCamera, type PhonePose, phoneCamera } from "./stage/phone-camera.ts";

const SIZE = { width: 1_500, height: 2_000 };
const PHOTO = { ...SIZE, at: new Uint8Array() };

/** As if the first dot lay at 0, 0 of the paper. */
function seenSheet(pose: Partial<PhonePose>, { x, y }: Stretch) {
  const usual = { yaw: 0, pitch: 0, turn: 0, distance: 350, focal: 2.2, lens: 0 };
  const camera = phoneCamera(SIZE, { ...usual, aim: [70, 70], ...pose });
  const sightings = Array.from({ length: 64 }, (_, index) => {
    const [across, down] = [(index % 8) * 4, Math.floor(index / 8) * 4];
    const [px, py] = camera.see([across * 5 * x, down * 5 * y]);
    return { across, down, x: px, y: py };
  });
  const view = fitView(sightings, PHOTO);
  if (!view) throw new Error("the sheet is not seen");
  return { camera, view };
}

describe("the camera", () => {
  it.each<[string, Partial<PhonePose>, number]>([
    ["straight above", {}, 0],
    ["askew by 18 degrees", { pitch: 18 }, 18],
    ["askew both ways, and turned", { pitch: -9, yaw: 12, turn: 100, distance: 250 }, 14.95],
  ])("%s is found where it was", (_, pose, tilt) => {
    const stretch = { x: 0.96, y: 1.02 };
    const { camera, view } = seenSheet(pose, stretch);
    const found = cameraOver(view, stretch, 2.2);
    expect(found?.height).toBeCloseTo(camera.height, 1);
    expect(found?.nadir.x).toBeCloseTo(camera.nadir[0], 1);
    expect(found?.nadir.y).toBeCloseTo(camera.nadir[1], 1);
    expect(found?.tilt).toBeCloseTo(tilt, 1);
  });

  it("tells its focal length where it looks askew, and nothing from straight above", () => {
    const stretch = { x: 0.97, y: 1 };
    const askew = focalFrom(seenSheet({ pitch: 18, focal: 1.6 }, stretch).view, stretch, ANY_FOCAL);
    expect(Math.exp(askew.log)).toBeCloseTo(1.6, 1);
    expect(askew.off).toBeLessThan(0.06);
    const level = focalFrom(seenSheet({ focal: 1.6 }, stretch).view, stretch, ANY_FOCAL);
    expect(level.off).toBeCloseTo(ANY_FOCAL.off, 1);
  });
});

interface Lying {
  readonly right: number;
  readonly down: number;
  readonly turn: number;
}

/** Where a side of the card is seen to lie: its upper edge, from a camera that does not see the face below it. */
function seenSide(side: CardSide, lying: Lying, { camera, view, stretch }: Seen) {
  const { long, short, thick } = BANK_CARD;
  const angle = ((CARD_PLACE.turn + lying.turn) * Math.PI) / 180;
  const part = thick / camera.height;
  const seen = [-1, 1].map((end) => {
    const [x, y] =
      side === "top" || side === "bottom"
        ? [(end * long) / 2, ((side === "top" ? -1 : 1) * short) / 2]
        : [((side === "left" ? -1 : 1) * long) / 2, (end * short) / 2];
    const paper = [
      CARD_PLACE.middle.x * stretch.x + lying.right + Math.cos(angle) * x - Math.sin(angle) * y,
      CARD_PLACE.middle.y * stretch.y + lying.down + Math.sin(angle) * x + Math.cos(angle) * y,
    ] as const;
    // What is higher than the paper hides a place of it that is farther from the camera's foot.
    const hidden = paper.map((mm, axis) => {
      const nadir = camera.nadir[axis] ?? 0;
      return nadir + (mm - nadir) / (1 - part);
    });
    const [px, py] = camera.see([hidden[0] ?? 0, hidden[1] ?? 0]);
    const { across, down } = latticeAt(view, { x: px, y: py });
    const place = toCardPlace({ x: across * 5, y: down * 5 });
    const isLevel = side === "top" || side === "bottom";
    const sign = side === "top" || side === "left" ? -1 : 1;
    return {
      along: isLevel ? place.x : place.y,
      off: sign * (isLevel ? place.y : place.x) - (isLevel ? short : long) / 2,
    };
  });
  const [from = { along: 0, off: 0 }, to = { along: 1, off: 0 }] = seen;
  const slope = (to.off - from.off) / (to.along - from.along);
  return {
    off: from.off - slope * from.along,
    slope,
    error: 0.002,
    part: 1,
    width: 0.2,
    next: 0,
    contrast: 0.6,
  };
}

interface Seen {
  readonly camera: PhoneCamera;
  readonly view: PlaneView;
  readonly stretch: Stretch;
}

function solved(pose: Partial<PhonePose>, stretch: Stretch, lying: Lying) {
  const seen = { ...seenSheet(pose, stretch), stretch };
  const line = (side: CardSide) => seenSide(side, lying, seen);
  const lines = {
    ...{ top: line("top"), right: line("right") },
    ...{ bottom: line("bottom"), left: line("left") },
  };
  const focal = { log: Math.log(pose.focal ?? 2.2), off: 0.03 };
  return solveCard(lines, { view: seen.view, perMm: 6, softness: 0.2, focal });
}

describe("the stretch of the sheet", () => {
  const part = (least: number, most: number) =>
    fc.double({ min: least, max: most, noNaN: true, noDefaultInfinity: true });

  it("comes from a card that is seen exactly, however it lies", () => {
    const given = fc.record({
      stretch: fc.record({ x: part(0.94, 1.03), y: part(0.94, 1.03) }),
      lying: fc.record({ right: part(-2, 2), down: part(-2, 2), turn: part(-4, 4) }),
      // The camera's foot stays on the card, so that its faces are not seen.
      pose: fc.record({
        yaw: part(-2.5, 2.5),
        pitch: part(-2.5, 2.5),
        turn: part(-180, 180),
        distance: part(200, 450),
        focal: part(1.4, 3),
      }),
    });
    fc.assert(
      fc.property(given, ({ stretch, lying, pose }) => {
        const card = solved(pose, stretch, lying);
        expect(Math.abs((card?.stretch.x ?? 0) / stretch.x - 1)).toBeLessThan(0.0004);
        expect(Math.abs((card?.stretch.y ?? 0) / stretch.y - 1)).toBeLessThan(0.0004);
        expect(card?.misfit).toBeLessThan(1);
      }),
      { seed: 22, numRuns: 15 },
    );
  });

  it.each([
    ["one side is seen a millimetre too far out", 1, 0],
    ["a corner is seen too far out", 0, 0.02],
  ])("does not come from a card of which %s", (_, farther, steeper) => {
    const seen = { ...seenSheet({}, { x: 1, y: 1 }), stretch: { x: 1, y: 1 } };
    const [top, right, bottom, left] = CARD_SIDES.map((side) =>
      seenSide(side, { right: 0, down: 0, turn: 0 }, seen),
    );
    if (!top || !right || !bottom || !left) throw new Error("a card has four sides");
    const wrong = { ...top, off: top.off + farther, slope: top.slope + steeper };
    const sheet = { view: seen.view, perMm: 6, softness: 0.2 };
    expect(solveCard({ top: wrong, right, bottom, left }, sheet)?.misfit).toBeGreaterThan(50);
  });
});

it.each(CARD_SIDES)("the place's side %s lies where it should", (side) => {
  const reach = edgeReach(side);
  for (const along of [-reach, reach]) {
    const { x, y } = toCardPlace(besideCard(side, along, 2));
    const isLevel = side === "top" || side === "bottom";
    expect(isLevel ? x : y).toBeCloseTo(along, 9);
    const far = (isLevel ? BANK_CARD.short : BANK_CARD.long) / 2 + 2;
    expect(Math.abs(isLevel ? y : x)).toBeCloseTo(far, 9);
  }
  expect(fromCardPlace(toCardPlace({ x: 3, y: 4 })).x).toBeCloseTo(3, 9);
});
