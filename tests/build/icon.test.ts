/** The icons of phones, which read no SVG: pictures of the SVG icon on the book's ground. */
import { readFileSync } from "node:fs";
import { Resvg } from "@resvg/resvg-js";
import { PNG } from "pngjs";
import { expect, it } from "vitest";
import { manifestFile } from "../../src/build/web/web-manifest.ts";
import { COLOURS } from "../../src/draw/style/role-style.ts";
import { compare } from "../print/golden.ts";

const site = (name: string) => readFileSync(new URL(`../../site/${name}`, import.meta.url));
const pictureOf = (name: string) => PNG.sync.read(site(name));

/** Phones cut the corners off: the icon is drawn with some ground around it, with more where any shape may be cut. */
const WITH_GROUND = 'viewBox="-7 -7 48 48"';
const FOR_ANY_SHAPE = 'viewBox="-10 -10 54 54"';

it.each([
  ["icon-180.png", 180, WITH_GROUND],
  ["icon-192.png", 192, WITH_GROUND],
  ["icon-512.png", 512, WITH_GROUND],
  ["icon-512-maskable.png", 512, FOR_ANY_SHAPE],
])("%s shows what the SVG icon shows, %i pixels wide", (name, width, box) => {
  const svg = site("icon.svg").toString();
  const wide = svg.replace('viewBox="0 0 34 34"', box);
  expect(wide).not.toBe(svg);
  const painted = new Resvg(wide, {
    fitTo: { mode: "width", value: width },
    background: COLOURS.ground,
  });
  const found = PNG.sync.read(Buffer.from(painted.render().asPng()));
  expect([found.width, found.height]).toEqual([width, width]);
  expect(compare(pictureOf(name), found)).toBeUndefined();
});

/** Of a maskable icon only a circle of 40 % of its size around the middle is sure to be seen (W3C, Web Application Manifest, "Icon masks and safe zone"). */
it("of the icon for any shape, the ground alone is cut off", () => {
  const { width, height, data } = pictureOf("icon-512-maskable.png");
  const ground = [...data.subarray(0, 4)];
  const cut: unknown[] = [];
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      const isSafe = Math.hypot(x + 0.5 - width / 2, y + 0.5 - height / 2) <= 0.4 * width;
      const at = (y * width + x) * 4;
      if (!isSafe && ground.some((part, index) => data[at + index] !== part)) cut.push([x, y]);
    }
  }
  expect(cut).toEqual([]);
});

it("every icon that the manifest names is as large as it says", () => {
  const { icons } = JSON.parse(manifestFile("Any").text);
  const pictures = icons.filter(({ type }: { readonly type: string }) => type === "image/png");
  expect(pictures.length).toBeGreaterThan(2);
  for (const { src, sizes } of pictures) {
    const { width, height } = pictureOf(src.replace("assets/", ""));
    expect([src, `${width}x${height}`]).toEqual([src, sizes]);
  }
});
