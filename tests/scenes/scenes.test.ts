import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createSVGWindow } from "svgdom";
import { describe, expect, it } from "vitest";
import { createSvgWriter } from "../../src/draw/svg/write-svg.ts";
import { parseXml } from "../draw/parse-xml.ts";
import { PAGE_SCENES } from "./page-scenes.ts";
import { SMALL_SCENES } from "./small-scenes.ts";

/**
 * Each scene lies beside this file as an SVG that people have looked at. A drawing that differs, or a
 * new one, is written as `<name>-changed.svg`: look at it, and rename it by hand if it is right.
 */
const MOST_BYTES = 8 * 1024;

const write = createSvgWriter(createSVGWindow());
const scenes = Object.entries({ ...PAGE_SCENES, ...SMALL_SCENES });
const fileOf = (name: string) => new URL(`./${name}.svg`, import.meta.url);

describe.each(scenes)("the scene %s", (name, scene) => {
  const svg = write(scene);

  it("is well-formed and small", () => {
    expect(parseXml(svg).name).toBe("svg");
    expect(Buffer.byteLength(svg)).toBeLessThanOrEqual(MOST_BYTES);
  });

  it("is drawn as it was when people looked at it", () => {
    const changed = fileOf(`${name}-changed`);
    const seen = existsSync(fileOf(name)) ? readFileSync(fileOf(name), "utf8") : "";
    if (seen === svg) rmSync(changed, { force: true });
    else writeFileSync(changed, svg);
    expect(svg, `look at ${name}-changed.svg`).toBe(seen);
  });
});

describe("the folder of scenes", () => {
  it("holds a drawing for every scene, and no other", () => {
    const files = readdirSync(new URL(".", import.meta.url)).filter((file) =>
      file.endsWith(".svg"),
    );
    const drawings = files.filter((file) => !file.endsWith("-changed.svg"));
    expect(drawings.sort()).toEqual(scenes.map(([name]) => `${name}.svg`).sort());
  });
});
