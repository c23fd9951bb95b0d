/** The copying card as one page, for paper of A6 or a phone: each side as a picture, then in sentences. */
import { CARD_WORDS } from "../../issue/words/say-card.ts";
import { length } from "../../measure/length.ts";
import { type CardSide, copyingCard } from "../../strip/copying-card.ts";
import type { Strip, StripSide } from "../../strip/strip.ts";
import { lineData, rectData } from "../geometry/path-data.ts";
import type { Mark, Scene } from "../scene.ts";
import { type Face, faceOf, laneTop } from "../strip/strip-face.ts";
import { laneMarks } from "../strip/strip-lane.ts";
import { writeStripMarks } from "../strip/strip-mark.ts";
import { middleMarks } from "../strip/strip-middles.ts";
import { placeMarks } from "../strip/strip-place.ts";
import { scaleMarks } from "../strip/strip-scale.ts";
import { stripNames } from "../strip/strip-scene.ts";
import { CLOSING_STEPS, openingSteps, runStep } from "./card-steps.ts";
import { cardText } from "./card-text.ts";

/** A6, ISO 216; longer where there is more to say. */
const PAGE = { width: 105, height: 148 };
const MARGIN = 7;
const WIDTH = PAGE.width - 2 * MARGIN;
const TITLE_SIZE = 3.8;
const LANE = 3.4;
const SPACE = 4;

/** Marks from the top of the page down, and where the next ones go. */
interface Column {
  readonly marks: readonly Mark[];
  readonly y: number;
}

/** The card of a strip. */
export function cardScene(strip: Strip): Scene {
  const { id, title } = stripNames(strip);
  const sides = copyingCard(strip);
  const start: Column = {
    marks: [titleMark(`${strip.title} · ${strip.notebook.title}`, TITLE_SIZE, MARGIN + TITLE_SIZE)],
    y: MARGIN + TITLE_SIZE + SPACE,
  };
  const told = strip.sides.reduce((column, side, index) => {
    const card = sides[index];
    return card === undefined ? column : tellSide(strip, side, card, column);
  }, start);
  const closed = tell(CLOSING_STEPS, told);
  const height = Math.max(PAGE.height, closed.y + MARGIN);
  return {
    id: `${id}-card`,
    title: CARD_WORDS.title(title),
    description: CARD_WORDS.description,
    frame: { x: 0, y: 0, width: PAGE.width, height },
    marks: [
      { kind: "path", role: "paper", d: rectData(0, 0, PAGE.width, height) },
      ...closed.marks,
    ],
  };
}

function tellSide(strip: Strip, side: StripSide, card: CardSide, column: Column): Column {
  const heading = { ...column, y: column.y + TITLE_SIZE };
  const text = CARD_WORDS.heading[side.axis];
  const face = smallFace(strip, side);
  const top = heading.y + SPACE / 2;
  const picture: Column = {
    marks: [
      ...heading.marks,
      titleMark(text, TITLE_SIZE * 0.8, heading.y),
      ...pictureMarks(face, top),
    ],
    y: top + face.height + SPACE * 0.75,
  };
  const runs = card.lanes.flatMap((lane, index) => lane.map((run) => runStep(run, index)));
  return tell([...openingSteps(card), ...runs], picture);
}

function tell(steps: Parameters<typeof cardText>[0], column: Column): Column {
  const { marks, height } = cardText(steps, { x: MARGIN, y: column.y, width: WIDTH });
  return { marks: [...column.marks, ...marks], y: column.y + height + SPACE / 2 };
}

function titleMark(text: string, size: number, y: number): Mark {
  return { kind: "text", role: "heading", x: MARGIN, y, size, anchor: "start", text };
}

/** The side as the strip has it, but as wide as the card: here the dots are the scale, not the paper. */
function smallFace(strip: Strip, side: StripSide): Face {
  const { grid } = side;
  const scale = (WIDTH * 1e6) / grid.paper;
  const small = {
    ...grid,
    pitch: length(grid.pitch * scale),
    firstDot: length(grid.firstDot * scale),
    paper: length(grid.paper * scale),
  };
  const face = faceOf(strip, { ...side, grid: small }, 0, {});
  return { ...face, laneHeight: LANE, height: face.edgeDepth + LANE * side.lanes.length };
}

function pictureMarks(face: Face, top: number): readonly Mark[] {
  const drawn = [...scaleMarks(face), ...laneMarks(face), ...middleMarks(face.side)];
  return [
    { kind: "path", role: "grid", d: dotRows(face, top), dash: dotDash(face) },
    { kind: "path", role: "edge-fine", d: lineData(MARGIN, top, MARGIN + WIDTH, top) },
    ...writeStripMarks(placeMarks(drawn, { x: MARGIN, y: top, turned: false })),
  ];
}

/** The band's rows of dots: ticks of the first lane end at the second row. */
function dotRows(face: Face, top: number): string {
  const { grid } = face.side;
  const from = MARGIN + grid.firstDot / 1e6;
  const to = from + ((grid.dots - 1) * grid.pitch) / 1e6;
  return Array.from({ length: face.side.lanes.length + 1 }, (_, row) => {
    const y = top + laneTop(face, row);
    return lineData(from, y, to + 0.01, y);
  }).join("");
}

/** A dash of no length, a pitch apart. */
function dotDash(face: Face): readonly number[] {
  return [0, face.side.grid.pitch / 1e6];
}
