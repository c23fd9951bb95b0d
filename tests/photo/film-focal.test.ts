/** What a camera wrote about its lens, out of files whose entries are laid here byte by byte. */
import { expect, it } from "vitest";
import { filmFocal, focalOf } from "../../src/photo/film-focal.ts";

interface Written {
  readonly isLittle?: boolean;
  readonly focal?: number;
  /** Of a zoom that only cuts out, in hundredths. */
  readonly zoom?: number;
  /** A segment before the one that matters. */
  readonly before?: readonly number[];
}

/** A JPEG file up to its Exif entries. */
function head({ isLittle = false, focal, zoom, before = [] }: Written): Uint8Array {
  const tiff = new DataView(new ArrayBuffer(96));
  tiff.setUint16(0, isLittle ? 0x4949 : 0x4d4d);
  tiff.setUint16(2, 42, isLittle);
  tiff.setUint32(4, 8, isLittle);
  const entry = (at: number, tag: number, type: number, value: number) => {
    tiff.setUint16(at, tag, isLittle);
    tiff.setUint16(at + 2, type, isLittle);
    tiff.setUint32(at + 4, 1, isLittle);
    if (type === 3) tiff.setUint16(at + 8, value, isLittle);
    else tiff.setUint32(at + 8, value, isLittle);
  };
  tiff.setUint16(8, 1, isLittle);
  entry(10, 0x8769, 4, 26);
  const own = [
    ...(zoom === undefined ? [] : [[0xa404, 5, 80] as const]),
    ...(focal === undefined ? [] : [[0xa405, 3, focal] as const]),
  ];
  tiff.setUint16(26, own.length, isLittle);
  own.forEach(([tag, type, value], index) => {
    entry(28 + index * 12, tag, type, value);
  });
  tiff.setUint32(80, zoom ?? 0, isLittle);
  tiff.setUint32(84, 100, isLittle);
  const body = [...new TextEncoder().encode("Exif"), 0, 0, ...new Uint8Array(tiff.buffer)];
  const length = body.length + 2;
  return Uint8Array.from([0xff, 0xd8, ...before, 0xff, 0xe1, length >> 8, length & 255, ...body]);
}

it.each<[string, Uint8Array, number | undefined]>([
  ["with its larger bytes first", head({ focal: 26 }), 26],
  ["with its smaller bytes first", head({ focal: 52, isLittle: true }), 52],
  ["behind another segment", head({ focal: 24, before: [0xff, 0xe0, 0, 4, 1, 2] }), 24],
  ["zoomed by its lens alone", head({ focal: 77, zoom: 100 }), 77],
  [
    "zoomed by cutting out: nobody knows what is told then",
    head({ focal: 26, zoom: 200 }),
    undefined,
  ],
  ["that tells nothing of it", head({}), undefined],
  ["that says nought", head({ focal: 0 }), undefined],
  ["that ends too early", head({ focal: 26 }).subarray(0, 40), undefined],
  ["of another kind", new TextEncoder().encode("no picture at all"), undefined],
  ["of nothing", new Uint8Array(), undefined],
])("a file %s", (_, bytes, focal) => {
  expect(filmFocal(bytes)).toBe(focal);
});

it("is known in half the photo's longer side: by the diagonal of small film, 43.27 mm", () => {
  expect(Math.exp(focalOf(26, { width: 4_000, height: 3_000 }).log)).toBeCloseTo(1.502, 3);
  expect(Math.exp(focalOf(26, { width: 3_000, height: 4_000 }).log)).toBeCloseTo(1.502, 3);
});
