/** Zip files: what is packed comes out again, and what a stranger may have packed is refused before it does harm. */
import fc from "fast-check";
import { strFromU8, strToU8, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { sayZipFault } from "../../../src/issue/words/say-zip-fault.ts";
import { writeZip } from "../../../src/view/kept/content-folder.ts";
import { readZip } from "../../../src/view/kept/read-zip.ts";

/** A file of 5,000 letters, packed by the zipfile of Python 3. */
const OF_PYTHON =
  "UEsDBBQAAAAIADs5fl1H7biAFgAAAIgTAAAQAAAAcGF0dGVybnMvd2Vlay5tZO3BMQEAAADCoNirbwo/oAAAAACAtwFQSwECFAMUAAAACAA7OX5dR+24gBYAAACIEwAAEAAAAAAAAAAAAAAAgAEAAAAAcGF0dGVybnMvd2Vlay5tZFBLBQYAAAAAAQABAD4AAABEAAAAAAA=";

const all = () => true;
const MIB = 1024 * 1024;
const zipped = (files: Readonly<Record<string, Uint8Array>>) =>
  zipSync(files, { mtime: "1990-01-01T12:00:00" });

const said = (bytes: Uint8Array, isWanted = all) => {
  const reading = readZip(bytes, isWanted);
  return reading.ok ? "fine" : sayZipFault(reading.fault).sentence;
};

/** The zip with some bytes changed in each entry of its directory. */
function changed(bytes: Uint8Array, change: (view: DataView, at: number) => void): Uint8Array {
  const copy = bytes.slice();
  const view = new DataView(copy.buffer);
  for (let at = 0; at + 4 <= copy.length; at++)
    if (view.getUint32(at, true) === 0x02014b50) change(view, at);
  return copy;
}

describe("a folder that is packed", () => {
  const files = [
    { path: "book.yaml", text: "title: Mine\n" },
    { path: "patterns/ei.md", text: "---\ntitle: Ei, größer\n---\n" },
  ];

  it("comes out as it was", () => {
    const reading = readZip(writeZip(files), all);
    expect(reading.ok && reading.files.map(({ name, bytes }) => [name, strFromU8(bytes)])).toEqual(
      files.map(({ path, text }) => [path, text]),
    );
  });

  it("has the same bytes each time", () => {
    expect(writeZip(files)).toEqual(writeZip(files));
  });

  it("comes out of what another program packed", () => {
    const reading = readZip(Buffer.from(OF_PYTHON, "base64"), all);
    expect(reading.ok && reading.files.map(({ name, bytes }) => [name, strFromU8(bytes)])).toEqual([
      ["patterns/week.md", "w".repeat(5_000)],
    ]);
  });
});

describe("a zip that is not opened", () => {
  const one = { "patterns/a.md": strToU8("a") };

  it.each([
    ["../a.md", "“../a.md” leads out of the folder."],
    ["patterns/../../a.md", "“patterns/../../a.md” leads out of the folder."],
    ["patterns\\..\\..\\a.md", "“patterns/../../a.md” leads out of the folder."],
    ["/etc/a.md", "“/etc/a.md” names a place outside the zip."],
    ["C:/a.md", "“C:/a.md” names a place outside the zip."],
    ["\\\\there\\a.md", "“//there/a.md” names a place outside the zip."],
  ])("has a file %j", (name, words) => {
    expect(said(zipped({ ...one, [name]: strToU8("x") }))).toBe(words);
    expect(said(zipped({ ...one, [name]: strToU8("x") }), () => false)).toBe(words);
  });

  it("has a file with more in it than it says, and is let go of at once", () => {
    const bomb = zipped({ "patterns/a.md": new Uint8Array(60 * MIB) });
    expect(bomb.length).toBeLessThan(MIB);
    const tooLarge = "What is in it is larger than 20 MB once it is unpacked.";
    expect(said(bomb)).toBe(tooLarge);
    expect(said(changed(bomb, (view, at) => view.setUint32(at + 24, 100, true)))).toBe(tooLarge);
  });

  it("has many files that are too large together, whatever each of them says", () => {
    const files = Array.from({ length: 30 }, (_, index) => [`${index}.md`, new Uint8Array(MIB)]);
    const bytes = zipped(Object.fromEntries(files));
    const tooLarge = "What is in it is larger than 20 MB once it is unpacked.";
    expect(said(bytes)).toBe(tooLarge);
    // Entries that all point to the same bytes weigh as often as they are named.
    const all30 = changed(bytes, (view, at) => view.setUint32(at + 42, 0, true));
    expect(said(all30)).toBe(tooLarge);
  });

  it("is too large itself", () => {
    expect(said(new Uint8Array(20 * MIB + 1))).toBe("It is larger than 20 MB.");
  });

  it("has more than 1,000 files", () => {
    const files = (count: number) =>
      zipped(Object.fromEntries(Array.from({ length: count }, (_, at) => [`${at}`, strToU8("")])));
    expect(said(files(1_000))).toBe("fine");
    expect(said(files(1_001))).toBe("There are more than 1,000 files in it.");
    expect(said(files(10_000))).toBe("There are more than 1,000 files in it.");
  });

  it("has a link in it", () => {
    // Made on Unix (3), a symbolic link for everybody: S_IFLNK of POSIX.
    const link = [strToU8("/etc/hosts"), { os: 3, attrs: (0o120777 << 16) >>> 0 }] as const;
    const bytes = zipSync({ "patterns/a.md": [...link] }, { mtime: "1990-01-01T12:00:00" });
    expect(said(bytes)).toBe("“patterns/a.md” is a link to another place.");
  });

  it.each([
    ["a password", 8, 1, "“patterns/a.md” is locked with a password."],
    [
      "an unknown packing",
      10,
      99,
      "“patterns/a.md” is packed in a way that this page does not know.",
    ],
    ["another size", 24, 2, "“patterns/a.md” is damaged."],
    ["a place that is none", 42, 60_000, "“patterns/a.md” is damaged."],
  ])("has %s", (_, place, value, words) => {
    const bytes = changed(zipped(one), (view, at) => view.setUint16(at + place, value, true));
    expect(said(bytes)).toBe(words);
  });

  it.each([
    ["nothing", new Uint8Array()],
    ["text", strToU8("not a zip, but long enough to be one")],
    ["a zip that was cut off", zipped(one).slice(0, -8)],
  ])("is %s", (_, bytes) => {
    expect(said(bytes)).toBe("This is not a zip file, or it was cut off.");
  });

  it("whatever is wrong with it, is never more than a sentence", () => {
    const whole = zipped({ ...one, "strips/b.md": strToU8("b".repeat(3_000)) });
    const spoils = fc.array(fc.tuple(fc.nat(whole.length - 1), fc.nat(255)), { maxLength: 6 });
    fc.assert(
      fc.property(spoils, (places) => {
        const bytes = whole.slice();
        for (const [at, value] of places) bytes[at] = value;
        expect(said(bytes)).toMatch(/^fine$|^[“A-Z].*\.$/);
      }),
      { seed: 20270301, numRuns: 500 },
    );
  });
});
