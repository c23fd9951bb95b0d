import { createSVGWindow } from "svgdom";
import { describe, expect, it } from "vitest";
import type { Mark, Scene } from "../../src/draw/scene.ts";
import { createSvgWriter } from "../../src/draw/svg/write-svg.ts";
import { xmlText } from "../../src/draw/svg/xml-text.ts";
import { allElements, parseXml } from "./parse-xml.ts";

const write = createSvgWriter(createSVGWindow());

function sceneOf(marks: readonly Mark[], given: Partial<Scene> = {}): Scene {
  const frame = { x: -10, y: -8.5, width: 100, height: 120.25 };
  return { id: "tried", title: "Tried", description: "A drawing.", frame, marks, ...given };
}

const edge = (d: string): Mark => ({ kind: "path", role: "edge", d });
const label = (text: string, given: Partial<Mark> = {}): Mark =>
  ({
    kind: "text",
    role: "label",
    x: 1,
    y: 2,
    size: 3,
    anchor: "start",
    text,
    ...given,
  }) as Mark;

describe("a drawing as SVG", () => {
  it("is in true size, and named for those who cannot see it", () => {
    expect(write(sceneOf([]))).toBe(
      [
        '<svg xmlns="http://www.w3.org/2000/svg" class="drawing" width="100mm" height="120.25mm" ' +
          'viewBox="-10 -8.5 100 120.25" role="img" aria-labelledby="tried-title tried-desc" ' +
          'font-family="Fira Sans, Helvetica, Arial, sans-serif">',
        '<title id="tried-title">Tried</title>',
        '<desc id="tried-desc">A drawing.</desc>',
        "</svg>",
        "",
      ].join("\n"),
    );
  });

  it("needs no namespace inside HTML, and is the same otherwise", () => {
    const scene = sceneOf([edge("M0 0H5"), label("Peas")]);
    const namespace = ' xmlns="http://www.w3.org/2000/svg"';
    expect(write(scene, "inline")).toBe(write(scene).replace(namespace, ""));
    expect(write(scene, "inline")).not.toContain("xmlns");
  });

  it("says a look once for marks of one role that follow one another", () => {
    const lines = write(sceneOf([edge("M0 0H5"), edge("M0 5H5"), label("Peas")])).split("\n");
    expect(lines.slice(3, -2)).toEqual([
      '<g class="d-edge" fill="none" stroke="#1f2b24" stroke-width="0.5" stroke-linecap="square">',
      '<path d="M0 0H5"/>',
      '<path d="M0 5H5"/>',
      "</g>",
      '<text class="d-label" fill="#1f2b24" font-size="3" x="1" y="2">Peas</text>',
    ]);
  });

  it("keeps the order of its marks", () => {
    const svg = write(sceneOf([edge("M1 1H2"), label("Peas"), edge("M3 3H4")]));
    const roles = [...svg.matchAll(/class="d-(\w+)"/g)].map(([, role]) => role);
    expect(roles).toEqual(["edge", "label", "edge"]);
  });

  it("writes plain numbers of one size into one element, digit by digit", () => {
    const number = (text: string, x: number): Mark => ({
      kind: "text",
      role: "count",
      x,
      y: 2,
      size: 2,
      anchor: "middle",
      text,
    });
    expect(write(sceneOf([number("7", 10), number("12", 20)])).split("\n")[3]).toBe(
      '<text class="d-count" fill="#4a5248" font-size="2" text-anchor="middle" x="10 19.444 20.556" y="2">712</text>',
    );
  });

  it("writes turned numbers into one element too, turned as one", () => {
    const number = (text: string, x: number) =>
      label(text, { x, y: 5, size: 2, anchor: "middle", turn: 180 } as Partial<Mark>);
    const [group] = write(sceneOf([number("7", 10), number("8", 20)]))
      .split("\n")
      .slice(3);
    expect(group).toBe(
      '<text class="d-label" fill="#1f2b24" font-size="2" text-anchor="middle" x="-10 -20" y="-5" transform="rotate(180)">78</text>',
    );
  });

  it("turns a text about its own point", () => {
    expect(write(sceneOf([label("Up", { turn: -90 })]))).toContain('transform="rotate(-90 1 2)"');
  });

  it("draws a lane in its own colour and dash, with a class of its own", () => {
    const svg = write(sceneOf([{ kind: "path", role: "lane", d: "M0 0H9", lane: 2 }]));
    expect(svg).toContain('class="d-lane d-lane-2"');
    expect(svg).toContain('stroke="#f51800"');
    expect(svg).toContain('stroke-dasharray="1.8 0.6"');
  });

  it("draws with a broader pen where the scene says so", () => {
    expect(write(sceneOf([edge("M0 0H5")], { penScale: 2 }))).toContain('stroke-width="1"');
  });

  it("has none of svg.js's own attributes, styles or scripts", () => {
    const svg = write(sceneOf([edge("M0 0H5"), label("Peas"), label("Leeks")]));
    expect(svg).not.toMatch(/svgjs|xlink|version|style|<script/i);
  });

  it("gives the same bytes from one writer, from another, and in any order", () => {
    const [a, b] = [sceneOf([edge("M0 0H5"), label("Peas")]), sceneOf([label("Leeks")])];
    const other = createSvgWriter(createSVGWindow());
    const first = [write(a), write(b)];
    expect([other(b), other(a)].reverse()).toEqual(first);
    expect([write(a), write(b)]).toEqual(first);
  });

  it("leaves its window as it was", () => {
    const window = createSVGWindow();
    createSvgWriter(window)(sceneOf([edge("M0 0H5"), label("Peas")]));
    expect(window.document.documentElement.childNodes).toHaveLength(0);
  });
});

describe("hostile text in a drawing", () => {
  it.each([
    ["markup", "<script>alert(1)</script>"],
    ["an end of the drawing", "</text></svg><script>"],
    ["quotes", `" onload="alert(1)' x='`],
    ["entities", "&amp;&lt;&nbsp;&#0;"],
    ["the seam that lines are broken at", "a><b></path><path>"],
    ["control characters", "\u0000\u0001\u001f\u007f"],
    ["half a pair", "\ud800 and \udc00"],
    ["noncharacters", "\ufffe\uffff"],
    ["marks of direction", "\u202eevil\u2066"],
    ["a no-break space", "a\u00a0b"],
    ["a section of character data", "<![CDATA[x]]>"],
    ["a comment", "<!-- x -->"],
    ["a document type", "<!DOCTYPE svg [<!ENTITY x 'y'>]>&x;"],
  ])("%s is text, in labels, title and description", (_, text) => {
    const svg = write(sceneOf([label(text), label("Peas")], { title: text, description: text }));
    const elements = allElements(parseXml(svg));
    expect(elements.map(({ name }) => name)).toEqual(["svg", "title", "desc", "g", "text", "text"]);
    expect(elements[1]?.text).toBe(xmlText(text));
    expect(elements[4]?.text).toBe(xmlText(text));
  });

  it.each(['"><script>', "a b", "ünï", "1"])("an id made from %j is a plain name", (id) => {
    const root = parseXml(write(sceneOf([], { id })));
    const ids = root.children.map(({ attributes }) => attributes.get("id"));
    expect(root.attributes.get("aria-labelledby")).toBe(ids.join(" "));
    for (const one of ids) expect(one).toMatch(/^[A-Za-z_][\w.-]*$/);
  });
});
