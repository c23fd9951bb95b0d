/** The screen, measured with a bank card, and what it shows in true size then. */

import type { Scene } from "../../../src/draw/scene.ts";
import { stripScene } from "../../../src/draw/strip/strip-scene.ts";
import type { BookShelf } from "../fit/book-content.ts";
import type { Draw } from "../fit/draw.ts";
import { startFit } from "../fit/start-fit.ts";
import { workOut } from "../fit/work-out.ts";
import type { Device } from "../page/device.ts";
import { onPress, partOf, theOne } from "../page/parts.ts";
import { ruleScene } from "./rule-scene.ts";
import {
  BANK_CARD,
  edgeLimits,
  keepScale,
  keptScale,
  pxPerMm,
  USUAL_PX_PER_MM,
} from "./screen-scale.ts";

interface Screen {
  readonly device: Device;
  readonly draw: Draw;
  readonly shelf: BookShelf;
}

type Edge = "long" | "short";

/** A phone is narrower than a card is long: there the card stands upright. */
const NARROW_PX = 560;

/** Wakes the card, its slider and what is shown in true size. Throws where the page lacks a part. */
export function bindScreen(page: Document, { device, draw, shelf }: Screen): void {
  const slider = theOne(page, "#card-edge", HTMLInputElement);
  const [card, found, shown] = [partOf(page, "card"), partOf(page, "scale"), partOf(page, "true")];
  const lying = [...page.querySelectorAll<HTMLInputElement>('input[name="lying"]')];
  const showing = theOne(page, "#showing", HTMLSelectElement);
  const kept = keptScale(device, devicePixelRatio);
  let scale = kept ?? USUAL_PX_PER_MM;
  let isFound = kept !== undefined;
  for (const one of lying) one.checked = one.value === (innerWidth < NARROW_PX ? "short" : "long");

  const edge = (): Edge =>
    lying.find(({ checked }) => checked)?.value === "short" ? "short" : "long";
  const show = () => {
    const { min, max } = edgeLimits(edge());
    Object.assign(slider, { min: `${min}`, max: `${max}` });
    slider.value = `${scale * BANK_CARD[edge()]}`;
    const [width, height] =
      edge() === "long" ? (["long", "short"] as const) : (["short", "long"] as const);
    card.style.width = `${BANK_CARD[width] * scale}px`;
    card.style.height = `${BANK_CARD[height] * scale}px`;
    card.style.borderRadius = `${BANK_CARD.corner * scale}px`;
    found.textContent = isFound
      ? `A millimetre is ${scale.toFixed(2)} px on this screen.`
      : "Not measured yet: what is shown below is a guess.";
    slider.setAttribute("aria-valuetext", `${scale.toFixed(2)} px a millimetre`);
    showTrue();
  };
  const showTrue = () => {
    const scene = sceneOf(showing.value, { device, draw, shelf });
    draw.show(shown, scene);
    const svg = shown.querySelector("svg");
    if (!svg) return;
    svg.style.width = `${scene.frame.width * scale}px`;
    svg.style.height = `${scene.frame.height * scale}px`;
  };
  const set = (next: number) => {
    scale = next;
    isFound = true;
    keepScale(device, scale, devicePixelRatio);
    show();
  };
  slider.addEventListener("input", () => set(pxPerMm(Number(slider.value), edge())));
  for (const one of lying) one.addEventListener("change", show);
  showing.addEventListener("change", showTrue);
  for (const [doing, by] of [
    ["narrower", -1],
    ["wider", 1],
  ] as const) {
    onPress(page, doing, () => set(pxPerMm(scale * BANK_CARD[edge()] + by * NUDGE_PX, edge())));
  }
  show();
}

/** A press of a button moves the edge by half a pixel, less than an eye can tell. */
const NUDGE_PX = 0.5;

/** The rule, or the strip that lies on the bench. */
function sceneOf(showing: string, { device, shelf }: Screen): Scene {
  if (showing === "rule" || shelf.recipes.length === 0) return ruleScene();
  return stripScene(workOut(startFit("", device, shelf).fit, shelf).strip);
}
