/** The words for a photo of the test sheet, whose bars are measured by a card. */
import type { BarsDoubt, MeasuredBars, UnsureBy } from "../../photo/bars-found.ts";
import type { Said } from "./said.ts";
import { sayCount, sayList } from "./say-count.ts";

/** How the photo is taken; what is measured, and how far it can be trusted. */
export const BARS_HOW = {
  photo:
    "Lay a card on its place on the test sheet, on a flat table. Hold the phone level above it, about 40 cm high, and zoom in until the square of dots fills the picture. Use even light, so that the card casts no shadow. The photo stays on this device: it is neither sent nor kept.",
  trust:
    "A length is only told where it is sure to 0.3 mm. The dots undo the slant and the lens, and the card gives the true size: 85.60 by 53.98 mm, which makers may miss by a tenth of a millimetre. It is 0.76 mm thick, and so a little nearer to the camera: that is taken into account.",
} as const;

const SIDES = 4;

const AGAIN =
  "Take it from straight above, with all of the dots in the picture, in even light and with a steady hand.";

/** Both lengths, to a twentieth of a millimetre. */
export function sayMeasuredBars({ length, off, camera }: MeasuredBars): string {
  const bar = (side: "x" | "y") => `${length[side].toFixed(2)} mm (±\u00a0${off[side].toFixed(2)})`;
  return `The bar along the short side measures ${bar("x")}, the one along the long side ${bar("y")}. The camera was about ${sayHeight(camera.height)} above the sheet. Check with the marks that the lines lie on the edges of the card.`;
}

/** To five centimetres: it is an estimate. */
function sayHeight(mm: number): string {
  return `${Math.max(5, Math.round(mm / 50) * 5)} cm`;
}

/** Why no lengths are told, and what would do. */
export function sayBarsDoubt(doubt: BarsDoubt): Said {
  switch (doubt.kind) {
    case "blurred":
      return {
        sentence: "The photo is not sharp enough to see the dots of the test sheet.",
        hint: "Hold the phone still, tap the sheet so that the camera looks at it, and use more light.",
      };
    case "no-sheet":
      return {
        sentence: `The test sheet is not seen, only ${sayCount(doubt.dots, "dot")} in rows.`,
        hint: `Print the test sheet; the bars of other sheets have no dots. ${AGAIN}`,
      };
    case "small":
      return {
        sentence: `The sheet is too small in the picture: a millimetre has ${doubt.perMm.toFixed(1)} pixels, and 3.5 are needed.`,
        hint: "Zoom in until the square of dots fills the picture, and open the photo itself, not a preview of it.",
      };
    case "cut-off":
      return {
        sentence: "The picture cuts off a part of the dots, of a bar or of the card.",
        hint: "Take all of the square of dots.",
      };
    case "no-bars":
      return {
        sentence: `${doubt.bars.length > 1 ? "The bars are" : `The bar along the ${doubt.bars[0] === "x" ? "short" : "long"} side is`} not seen where the dots say.`,
        hint: `Let nothing lie on the bars, the card neither. ${AGAIN}`,
      };
    case "not-flat":
      return {
        sentence: "The sheet is curled: its dots do not lie on a plane.",
        hint: "Lay it on a hard table and press it flat; hold its edges down with something heavy.",
      };
    case "no-card":
      return {
        sentence: "No card is seen on its place.",
        hint: "Lay it between the four corner marks. A dark card is seen best: one as white as the paper is not.",
      };
    case "hidden":
      return sayHidden(SIDES - doubt.sides.length);
    case "no-such-card":
      return {
        sentence: "What lies there has not the shape of a bank card.",
        hint: "Take a card of 85.60 by 53.98 mm, and light from more than one side: a shadow may look like a part of it.",
      };
    case "two-edges":
      return {
        sentence: "A shadow lies beside the card, and its edge cannot be told from the card’s.",
        hint: "Use light from more than one side, or a cloudy window, so that the card casts no shadow.",
      };
    case "unlikely":
      return {
        sentence: `The bars would measure ${doubt.length.x.toFixed(1)} and ${doubt.length.y.toFixed(1)} mm.`,
        hint: "Print the sheet again at 100 %: this is more than a printer’s own error.",
      };
    case "unsure":
      return {
        sentence: `The lengths could be off by ${(Math.ceil(doubt.off * 10) / 10).toFixed(1)} mm; they are only told to 0.3 mm.`,
        hint: REMEDY[doubt.by],
      };
  }
}

function sayHidden(seen: number): Said {
  return {
    sentence: `Only ${seen} of the card’s four sides ${seen === 1 ? "is" : "are"} seen.`,
    hint: "Lay it between the four corner marks, with nothing on its edges, a finger neither, and take another card if its edges are as white as the paper.",
  };
}

const REMEDY: Readonly<Record<UnsureBy, string>> = {
  tilt: "Hold the phone level, straight above the middle of the sheet.",
  nearness:
    "Go farther away, to about 40 cm, and zoom in instead. Open the file as the camera saved it: it tells of the lens.",
  shadow: "Use light from more than one side, so that the card casts no shadow.",
  faint: "Take a darker card: beside a light one, a shadow looks like a part of it.",
  size: "Zoom in until the square of dots fills the picture, from about 40 cm.",
};

/** What is marked on the photo, for those who do not see it. */
export function sayBarMarks({
  dots,
  sides,
  hasBars,
}: {
  readonly dots: number;
  readonly sides: number;
  readonly hasBars: boolean;
}): string {
  const marked = [
    sayCount(dots, "dot"),
    `${sayCount(sides, "side")} of the card`,
    ...(hasBars ? ["the ends of both bars"] : []),
  ];
  return `The photo, with ${sayList(marked, "and")} marked on it`;
}
