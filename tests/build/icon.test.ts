/** The icon of phones that read no SVG: a picture of the SVG icon on the book's ground. */
import { readFileSync } from "node:fs";
import { Resvg } from "@resvg/resvg-js";
import { PNG } from "pngjs";
import { expect, it } from "vitest";
import { COLOURS } from "../../src/draw/style/role-style.ts";
import { compare } from "../print/golden.ts";

const site = (name: string) => readFileSync(new URL(`../../site/${name}`, import.meta.url));

/** Phones cut the corners off: the icon is drawn with some ground around it. */
const WITH_GROUND = 'viewBox="-7 -7 48 48"';

it("shows what the SVG icon shows", () => {
  const svg = site("icon.svg").toString();
  const wide = svg.replace('viewBox="0 0 34 34"', WITH_GROUND);
  expect(wide).not.toBe(svg);
  const painted = new Resvg(wide, {
    fitTo: { mode: "width", value: 192 },
    background: COLOURS.ground,
  });
  const found = PNG.sync.read(Buffer.from(painted.render().asPng()));
  expect(compare(PNG.sync.read(site("icon-192.png")), found)).toBeUndefined();
});
