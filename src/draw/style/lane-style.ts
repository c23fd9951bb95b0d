/** How a pattern looks on a strip: eight looks that differ in colour and in dash. */

/** One look; the letter that goes with it is the pattern's own. */
export interface LaneStyle {
  /** What a person calls the pen. */
  readonly name: string;
  readonly colour: string;
  /** Dash and space in millimetres; none for an unbroken line. */
  readonly dash: readonly number[];
  /** What a person calls the dash. */
  readonly stroke: string;
}

/**
 * The hues are those of Okabe & Ito, Color Universal Design (2002, revised 2008): blue, vermillion,
 * bluish green, reddish purple, black, orange, sky blue; grey stands for their yellow, which paper swallows.
 * Each was moved by a search until it stands 3 : 1 against paper and any two of the eight differ by
 * 20 in CIEDE2000 as seen, with deuteranopia and with protanopia. The tests compute both again.
 */
export const LANE_STYLES: readonly [LaneStyle, ...LaneStyle[]] = [
  { name: "blue", colour: "#0049fd", dash: [], stroke: "unbroken" },
  { name: "red", colour: "#f51800", dash: [1.8, 0.6], stroke: "dashes" },
  { name: "green", colour: "#027b4f", dash: [0.5, 0.5], stroke: "dots" },
  { name: "rose", colour: "#cf0066", dash: [1.8, 0.5, 0.5, 0.5], stroke: "dash and dot" },
  { name: "black", colour: "#000000", dash: [0.9, 0.9], stroke: "short dashes" },
  { name: "ochre", colour: "#ba8600", dash: [3.2, 0.7], stroke: "long dashes" },
  {
    name: "sky",
    colour: "#3d95d9",
    dash: [1.8, 0.5, 0.5, 0.5, 0.5, 0.5],
    stroke: "dash and two dots",
  },
  { name: "grey", colour: "#819292", dash: [0.5, 0.4, 0.5, 1.1], stroke: "pairs of dots" },
];

/** The look of a colour number, 1 to 8. */
export function laneStyle(colour: number): LaneStyle {
  return LANE_STYLES[colour - 1] ?? LANE_STYLES[0];
}
