/** The screen, measured with a bank card, and what it shows in true size then. */
import type { Scene } from "../../../src/draw/scene.ts";
import { stripScene } from "../../../src/draw/strip/strip-scene.ts";
import type { Catalogue } from "../../../src/view/catalogue.ts";
import { stripResult } from "../../../src/view/strip/strip-result.ts";
import { startStrip } from "../app/start-strip.ts";
import type { Device } from "../device/device.ts";
import { partOf, theOne } from "../ui/parts.ts";
import type { Draw } from "../ui/show-drawing.ts";
import { bindCard } from "./bind-card.ts";
import { ruleScene } from "./rule-scene.ts";
import { USUAL_PX_PER_MM } from "./screen-scale.ts";

interface Screen {
  readonly device: Device;
  readonly draw: Draw;
  readonly catalogue: Catalogue;
}

/** Enhances the card, its slider and what is shown in true size. Throws where the page lacks a part. */
export function bindScreen(page: Document, screen: Screen): void {
  bindCard(page, screen.device, trueShow(page, screen));
}

/** Shows what is chosen, now and later, at as many pixels a millimetre as it was told last. */
function trueShow(page: Document, screen: Screen): (scale: number) => void {
  const showing = theOne(page, "#showing", HTMLSelectElement);
  const shown = partOf(page, "true");
  let scale = USUAL_PX_PER_MM;
  const show = () => {
    const scene = sceneOf(showing.value, screen);
    screen.draw.show(shown, scene);
    const svg = shown.querySelector("svg");
    if (!svg) return;
    // In millimetres; how large one is on the screen is said once beside them, and paper has its own.
    svg.style.setProperty("--wide", `${scene.frame.width}`);
    svg.style.setProperty("--high", `${scene.frame.height}`);
    shown.style.setProperty("--screen-mm", `${scale}px`);
  };
  showing.addEventListener("change", show);
  return (next) => {
    scale = next;
    show();
  };
}

/** The rule, or the keeper's strip. */
function sceneOf(showing: string, { device, catalogue }: Screen): Scene {
  if (showing === "rule" || catalogue.recipes.length === 0) return ruleScene();
  return stripScene(stripResult(startStrip("", device, catalogue).asked, catalogue).strip);
}
