/** What may stand behind the # of an address: what the pages write, parts of it, and what becomes of it on the way. */
import fc from "fast-check";
import type { FlowValue } from "../../src/source/front-matter/write-flow.ts";
import { writeDivisionAddress } from "../../src/view/address/division-address.ts";
import { writeFitAddress } from "../../src/view/address/fit-address.ts";
import { writeGalleryAddress } from "../../src/view/address/gallery-address.ts";
import { packText, writeRecipeAddress } from "../../src/view/address/recipe-address.ts";
import { writeSetupAddress } from "../../src/view/address/setup-address.ts";
import { writeStripAddress } from "../../src/view/address/strip-address.ts";
import { USUAL_DIVISION } from "../../src/view/division/division.ts";
import { EVERYTHING } from "../../src/view/gallery/gallery-query.ts";
import { anyDates } from "./any-dates.ts";
import { anyNotebook, likelyNotebook } from "./any-notebook.ts";
import { anySetup } from "./any-setup.ts";
import { anyStrip } from "./any-strip.ts";
import { type Choices, chosen, chosenFrom } from "./choices.ts";
import { edited } from "./edited-text.ts";

/** What pages write. `texts` are recipes. */
export function writtenAddress(
  slugs: readonly [string, ...string[]],
  texts: fc.Arbitrary<string>,
): fc.Arbitrary<string> {
  const slug = fc.constantFrom(...slugs);
  const bare = fc
    .oneof(likelyNotebook(), anyNotebook())
    .map((notebook) => ({ ...notebook, title: "", slug: "", body: "" }));
  const own = fc.array(fc.record({ slug, packed: texts.map(packText) }), { maxLength: 1 });
  const calendar = anyDates().map((dates) => dates.calendar);
  const strip = anyStrip(slug);
  return fc.oneof(
    fc
      .record({ notebook: bare, pattern: slug, dates: anyDates() })
      .map((fit) => writeFitAddress(fit)),
    fc.record({ notebook: bare, slug: fc.constant(""), text: texts }).map(writeRecipeAddress),
    fc.record({ notebook: bare, strip, own }).map(writeStripAddress),
    fc.record({ notebook: bare, setup: anySetup(slug), calendar, own }).map(writeSetupAddress),
    bare.map((notebook) => writeDivisionAddress({ notebook, division: USUAL_DIVISION })),
    slug.map((query) => writeGalleryAddress({ ...EVERYTHING, query, purposes: ["week"] })),
  );
}

/** Keys of all pages. */
const KEYS = [
  ...[
    "v",
    "paper",
    "pitch",
    "dots",
    "first",
    "count",
    "ruling",
    "binding",
    "middle",
    "name",
    "file",
  ],
  ...[
    "pattern",
    "dates",
    "region",
    "language",
    "week",
    "weekone",
    "across",
    "down",
    "lanes",
    "make",
  ],
  ...[
    "width",
    "strip",
    "stripfile",
    "sfile",
    "own",
    "from",
    "mine",
    "recipe",
    "text",
    "pages",
    "fill",
  ],
  ...[
    "setup",
    "setupfile",
    "add",
    "axis",
    "parts",
    "gap",
    "margin",
    "on",
    "for",
    "tag",
    "fit",
    "lines",
  ],
  ...["sort", "find", "stroke", "marks", "lane"],
] as const;

const VALUES = [
  ...[
    "",
    "1",
    "2",
    "A5",
    "A6",
    "own",
    "90,130",
    "5",
    "4.5,7",
    "26,38",
    "26,38,40",
    "400,400",
    "5,",
    ",",
  ],
  ...[
    "edge-to-dot",
    ",dot-to-dot",
    "top",
    "seed-list",
    "no-such",
    "seed-list:7",
    "seed-list:99999999",
  ],
  ...[
    "seed-list,seed-list",
    "[]",
    "[",
    '["seed-list",{"title":"Thirds","split":{"count":3,"gap":1}}]',
  ],
  ...[
    '[{"title":"seed list","split":2}]',
    '[{"pattern":1}]',
    "[[[[]]]]",
    '{"a":1}',
    "2027-03",
    "2027-W53",
  ],
  ...[
    "0000-01",
    "2027/..",
    "P1M",
    "GB",
    "XX",
    "de",
    "deutsch",
    "monday",
    "mo",
    "7",
    "8",
    "down",
    "0",
    "-1",
  ],
  ...[
    "1e9",
    "NaN",
    "Infinity",
    "%ff",
    "%E0%A4%A",
    "%",
    "%00",
    "%0A",
    "%ED%A0%80",
    "+",
    "eJx",
    "AAAA",
    "_-",
  ],
  ...[
    '[{"each":"week","pages":["seed-list"]}]',
    '[{"each":"day","pages":[]}]',
    "__proto__",
    "%F0%9F%91%A9",
  ],
  ...[
    '[{"title":"T","split":{"tracks":[{"columns":200}]}}]',
    '{"__proto__":1}',
    "../x",
    "a".repeat(99),
  ],
] as const;

/** Values beside their own keys: days that there are not, and what a field cannot hold. */
const PARTS = [
  ...["dates=2027-13", "dates=2027-02-30", "dates=2027-W54", "dates=0000", "dates=9999-W53"],
  ...["dates=P1M", "dates=2027-03/2026-01", "dates=2027/..", "dates=2000/2099", "dates=2027-03"],
  ...["pitch=5.12345678", "name=a%00b", "name=", "first=900,900", "week=someday"],
] as const;

/** Parts that come together by chance. */
const together = chosen((choices) => {
  const { one, below, isIn100 } = choices;
  const parts = Array.from({ length: below(9) }, () => partOf(choices));
  const usual = isIn100(60) ? ["paper=A5", "pitch=5", "dots=26,38"] : [];
  return `#${isIn100(90) ? `v=${one(["1", "1", "1", "1", "2", "0", "", "01"])}&` : ""}${[...usual, ...parts].join("&")}`;
}, 40);

function partOf({ one, isIn100 }: Choices): string {
  if (isIn100(15)) return one(PARTS);
  return `${one(KEYS)}${isIn100(3) ? "" : "="}${one(VALUES)}`;
}

/** Cut off, put together, escaped twice, with anything in between. */
export function wildAddress(
  slugs: readonly [string, ...string[]],
  texts: fc.Arbitrary<string>,
): fc.Arbitrary<string> {
  const written = writtenAddress(slugs, texts);
  const spoilt = chosenFrom(written, (hash, choices) => {
    const { one, below, isIn100 } = choices;
    const act = one(["edited", "part", "cut", "escaped", "version", "twice", "long"]);
    if (act === "edited") return edited(hash, { choices, words: [...KEYS, ...VALUES] });
    if (act === "cut") return hash.slice(0, below(hash.length + 1));
    if (act === "escaped") return hash.replaceAll("%", "%25");
    if (act === "version") return hash.replace("v=1", one(["v=2", "v=", "V=1", "v=1.0", ""]));
    if (act === "twice") return `${hash}&${hash.slice(1)}`;
    if (act === "long" && isIn100(20)) return `${hash}&name=${"a".repeat(17_000)}`;
    const parts = hash.split("&");
    return parts.toSpliced(below(parts.length), 1, partOf(choices)).join("&");
  });
  return fc.oneof(
    { weight: 2, arbitrary: written },
    { weight: 4, arbitrary: spoilt },
    { weight: 4, arbitrary: together },
    {
      weight: 1,
      arbitrary: fc.string({ unit: "binary", maxLength: 40 }).map((text) => `#${text}`),
    },
  );
}

/** Entries as they are put on a kept strip. */
export const ADDED: readonly FlowValue[] = [
  "seed-list",
  { pattern: "seed-list", uses: 3 },
  { title: "Thirds", split: { count: 3, gap: 1 } },
];
