/** A bank card in its own size, and the controls that bring its edge to the one that is held against the screen. */
import { BANK_CARD } from "../../../src/measure/bank-card.ts";
import type { Device } from "../device/device.ts";
import { onPress, partOf, theOne } from "../ui/parts.ts";
import { edgeLimits, keepScale, keptScale, pxPerMm, USUAL_PX_PER_MM } from "./screen-scale.ts";

type Edge = "long" | "short";

/** A phone is narrower than a card is long: there the card stands upright. */
const NARROW_PX = 560;

/** A press of a button moves the edge by half a pixel, less than an eye can tell. */
const NUDGE_PX = 0.5;

/** Enhances the card. `tell` hears how many pixels a millimetre has, now and after every change. */
export function bindCard(page: Document, device: Device, tell: (scale: number) => void): void {
  const slider = theOne(page, "#card-edge", HTMLInputElement);
  const [card, found] = [partOf(page, "card"), partOf(page, "scale")];
  const { edge, onTurn } = lyingCard(page);
  const kept = keptScale(device, devicePixelRatio);
  let scale = kept ?? USUAL_PX_PER_MM;
  let isFound = kept !== undefined;

  const show = () => {
    setSlider(slider, edge(), scale);
    layCard(card, edge(), scale);
    found.textContent = isFound
      ? `A millimetre is ${scale.toFixed(2)} px on this screen.`
      : "Not measured yet: what is shown below is a guess.";
    tell(scale);
  };
  const set = (edgePx: number) => {
    scale = pxPerMm(edgePx, edge());
    isFound = true;
    keepScale(device, scale, devicePixelRatio);
    show();
  };
  const nudge = (px: number) => set(scale * BANK_CARD[edge()] + px);
  slider.addEventListener("input", () => set(Number(slider.value)));
  onTurn(show);
  onPress(page, "narrower", () => nudge(-NUDGE_PX));
  onPress(page, "wider", () => nudge(NUDGE_PX));
  show();
}

interface LyingCard {
  /** The edge that lies level. */
  readonly edge: () => Edge;
  readonly onTurn: (act: () => void) => void;
}

/** How the card lies: first as the window has room for it, then as is chosen. */
function lyingCard(page: Document): LyingCard {
  const choices = [...page.querySelectorAll<HTMLInputElement>('input[name="lying"]')];
  const first: Edge = innerWidth < NARROW_PX ? "short" : "long";
  for (const one of choices) one.checked = one.value === first;
  return {
    edge: () => (choices.find(({ checked }) => checked)?.value === "short" ? "short" : "long"),
    onTurn: (act) => {
      for (const one of choices) one.addEventListener("change", act);
    },
  };
}

function setSlider(slider: HTMLInputElement, edge: Edge, scale: number): void {
  const { min, max } = edgeLimits(edge);
  Object.assign(slider, { min: `${min}`, max: `${max}` });
  slider.value = `${scale * BANK_CARD[edge]}`;
  slider.setAttribute("aria-valuetext", `${scale.toFixed(2)} px a millimetre`);
}

/** `edge` is the one that lies level. */
function layCard(card: HTMLElement, edge: Edge, scale: number): void {
  card.style.width = `${BANK_CARD[edge] * scale}px`;
  card.style.height = `${BANK_CARD[edge === "long" ? "short" : "long"] * scale}px`;
  card.style.borderRadius = `${BANK_CARD.corner * scale}px`;
}
