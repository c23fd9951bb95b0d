/** The counted middle and the paper's own: solid against hollow, dashed against dotted, so that colour is never needed. */
import { AXES, type Axis, otherAxis } from "../../measure/axis.ts";
import { type Middle, middlesOf } from "../../measure/grid-axis.ts";
import { lineAlong } from "../geometry/on-axis.ts";
import type { PagePlace } from "../geometry/page-place.ts";
import { polygonData } from "../geometry/path-data.ts";
import { intervalAlong } from "../geometry/rect.ts";
import type { PathMark } from "../scene.ts";
import { type BandSide, bandPoint } from "./band.ts";

const WEDGE = { half: 0.9, from: 0.7, to: 2.5 };
const DIAMOND = { half: 1.15, centre: 1.75 };

/** Wedges and diamonds in the bands. */
export function middleSigns(sides: readonly BandSide[], middle: Middle): readonly PathMark[] {
  const wedges = sides.flatMap((side) =>
    countedMiddles(side.place, side.axis, middle).map((along) => wedgeData(side, along)),
  );
  const diamonds = sides.map((side) => diamondData(side, side.place.middle[side.axis]));
  return [
    { kind: "path", role: "paper-middle", d: diamonds.join("") },
    { kind: "path", role: "middle", d: wedges.join("") },
  ];
}

/** Lines over the whole paper. */
export function middleLines(places: readonly PagePlace[], middle: Middle): readonly PathMark[] {
  const through = (positionsOf: (place: PagePlace, axis: Axis) => readonly number[]) =>
    places
      .flatMap((place) =>
        AXES.flatMap((axis) => {
          const whole = intervalAlong(place.paper, otherAxis(axis));
          return positionsOf(place, axis).map((at) => lineAlong(otherAxis(axis), whole, at));
        }),
      )
      .join("");
  return [
    {
      kind: "path",
      role: "paper-middle",
      d: through((place, axis) => [place.middle[axis]]),
      dash: [0.3, 1.2],
    },
    {
      kind: "path",
      role: "middle",
      d: through((place, axis) => countedMiddles(place, axis, middle)),
      dash: [2, 1.2],
    },
  ];
}

/** Millimetres of the counted middle, or of both. */
function countedMiddles({ lines }: PagePlace, axis: Axis, middle: Middle): readonly number[] {
  return middlesOf(lines[axis].length - 1, middle).map((position) => lines[axis][position] ?? 0);
}

function wedgeData(side: BandSide, along: number): string {
  const corner = cornerIn(side, along);
  return polygonData([
    corner(0, WEDGE.from),
    corner(-WEDGE.half, WEDGE.to),
    corner(WEDGE.half, WEDGE.to),
  ]);
}

function diamondData(side: BandSide, along: number): string {
  const { half, centre } = DIAMOND;
  const corner = cornerIn(side, along);
  return polygonData([
    corner(0, centre - half),
    corner(half, centre),
    corner(0, centre + half),
    corner(-half, centre),
  ]);
}

/** A corner so far beside a point of the band and so far outside of the paper. */
function cornerIn(side: BandSide, along: number) {
  return (shift: number, out: number): readonly [number, number] => {
    const { x, y } = bandPoint(side, along + shift, out);
    return [x, y];
  };
}
