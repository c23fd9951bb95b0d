/**
 * Files of every kind against the rules of PDF/UA-1 that a program can check: those of the Matterhorn Protocol 1.1 (PDF
 * Association, pdfa.org) that files without forms, sounds, tables and scripts can break, by the protocol's own numbers.
 */
import { execFileSync } from "node:child_process";
import { describe, expect, it } from "vitest";
import { readContents, readObjects, readSizes } from "../print/mupdf.ts";
import { PDF_KINDS, pdfOf } from "../print/pdf-kinds.ts";

interface Tagged {
  readonly objects: ReadonlyMap<number, string>;
  readonly all: readonly string[];
  readonly bytes: string;
  readonly contents: readonly string[];
}

/** Structure types of ISO 32000-1, 14.8.4, that a book uses. */
const STANDARD = ["Document", "Sect", "H1", "P", "Figure", "Link"];

type Check = (file: Tagged) => boolean;

const CHECKS: Readonly<Record<string, Check>> = {
  "01-003 and 01-004 nothing tagged lies in an artifact, and no artifact in what is tagged": ({
    contents,
  }) => contents.every((text) => markedDepths(text).every(({ depth }) => depth <= 1)),
  "01-005 all that is painted is tagged or an artifact": ({ contents }) =>
    contents.every((text) => markedDepths(text).every(({ depth }) => depth === 1)),
  "02-001 all structure types are standard ones": ({ all }) =>
    structures(all).every((type) => STANDARD.includes(type)) && structures(all).length > 0,
  "06-001 there is XMP metadata": ({ all }) => all.some((one) => one.includes("/Type/Metadata")),
  "06-002 it has the identifier of PDF/UA": ({ bytes }) =>
    bytes.includes("<pdfuaid:part>1</pdfuaid:part>"),
  "06-003 it has a title": ({ bytes }) => /<dc:title>.*<rdf:li [^>]*>[^<]+<\/rdf:li>/.test(bytes),
  "07-001 and 07-002 a window shows the title": ({ all }) =>
    all.some((one) => one.includes("/DisplayDocTitle true")),
  "11-006 there is a language": (file) => /\/Lang\(en\)/.test(catalogue(file)),
  "13-004 every figure has words": ({ all }) =>
    all.filter((one) => one.includes("/S/Figure")).every((one) => /\/Alt[<(]/.test(one)),
  "14-002 the first heading is of the first level, and no level is skipped": ({ all }) =>
    structures(all).every((type) => !/^H[2-9]/.test(type)),
  "28-008 and 28-009 with the Tab key one goes by the structure": ({ all }) =>
    all.filter((one) => one.includes("/Type/Page/")).every((one) => one.includes("/Tabs/S")),
  "28-011 every link is in a link of the structure": ({ all }) =>
    links(all).every((one) => one.includes("/StructParent ")) &&
    links(all).length === all.filter((one) => one.includes("/Type/OBJR")).length,
  "28-012 every link says where it leads": ({ all }) =>
    links(all).every((one) => /\/Contents[<(]/.test(one)),
  "31-001 to 31-030 fonts are in the file, with characters for all signs": ({ all }) => {
    const fonts = all.filter((one) => one.includes("/Type/Font/") || /\/Type\/Font[>\s]/.test(one));
    const descriptors = all.filter((one) => one.includes("/Type/FontDescriptor"));
    const used = fonts.filter((one) => /\/Subtype\/Type[03]/.test(one));
    const embedded = descriptors.filter((one) =>
      /\/FontFile|\/FontName\/[A-Z0-9]*Missing/.test(one),
    );
    return (
      used.length > 0 &&
      used.every((one) => one.includes("/ToUnicode ")) &&
      embedded.length === descriptors.length
    );
  },
  "the file is tagged (ISO 32000-1, 14.8.1)": (file) =>
    /\/StructTreeRoot /.test(catalogue(file)) &&
    file.all.some((one) => one.includes("/Marked true")) &&
    !file.all.some((one) => one.includes("/Suspects true")),
};

const structures = (all: readonly string[]) =>
  all.flatMap((one) => (/\/K\b.*\/P \d+ 0 R\/S\/(\w+)/.exec(one)?.[1] ? [RegExp.$1] : []));
const links = (all: readonly string[]) => all.filter((one) => one.includes("/Subtype/Link"));
const catalogue = ({ all }: Tagged) => all.find((one) => one.includes("/Type/Catalog")) ?? "";

/** For each operator that paints, how deep it lies in marked content. */
function markedDepths(contents: string): readonly { readonly depth: number }[] {
  // Strings and dictionaries hold letters that are no operators.
  const plain = contents.replace(/\((?:\\.|[^\\)])*\)|<[0-9a-fA-F\s]*>|<<[^<>]*>>/g, " ");
  const painted: { depth: number }[] = [];
  let depth = 0;
  for (const word of plain.split(/\s+/)) {
    if (word === "BDC" || word === "BMC") depth += 1;
    else if (word === "EMC") depth -= 1;
    else if (/^(f|f\*|S|s|B|b|B\*|b\*|Tj|TJ|Do)$/.test(word)) painted.push({ depth });
  }
  return painted;
}

function fileOf(pdf: Uint8Array): Tagged {
  const objects = readObjects(pdf);
  return {
    objects,
    all: [...objects.values()],
    bytes: Buffer.from(pdf).toString("utf8"),
    contents: readSizes(pdf)
      .slice(0, 3)
      .map((_, index) => readContents(pdf, index + 1)),
  };
}

const broken = (file: Tagged) =>
  Object.entries(CHECKS).flatMap(([rule, isKept]) => (isKept(file) ? [] : [rule]));

describe("the rules of PDF/UA-1", () => {
  it.each(PDF_KINDS)("are kept by %s", async (_, path) => {
    expect(broken(fileOf(await pdfOf(path)))).toEqual([]);
  });

  it("are broken by a file of a program that tags nothing", async () => {
    const plain = execFileSync("pdftocairo", ["-pdf", "-f", "1", "-l", "1", "-", "-"], {
      input: await pdfOf("patterns/two-row-week/a5/page.pdf"),
    });
    const found = broken(fileOf(plain)).map((rule) => rule.split(" ", 1).join());
    expect(found).toEqual(
      expect.arrayContaining([
        "01-005",
        "02-001",
        "06-001",
        "06-002",
        "06-003",
        "07-001",
        "11-006",
        "the",
      ]),
    );
  });
});
