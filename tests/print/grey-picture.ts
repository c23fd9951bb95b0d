/** A page as a reader of PDF draws it, in grey, from the plainest of all pictures. */

/** A page in grey: 0 is black, 255 white. */
export interface GreyPicture {
  readonly greyAt: (x: number, y: number) => number;
  /** Pixels per millimetre. */
  readonly across: number;
  readonly down: number;
}

/** Of netpbm's grey map (`man 5 pgm`, P5, a byte a pixel) at so many dots per inch: a PNG takes long to pack and unpack. */
export function greyPicture(pgm: Buffer, dpi: number): GreyPicture {
  const head = /^P5\s(?:#.*\n)?(\d+)\s(\d+)\s255\s/.exec(pgm.toString("latin1", 0, 200));
  if (!head) throw new Error("this is no grey map of a byte a pixel");
  const width = Number(head[1]);
  const first = head[0].length;
  const perMm = dpi / 25.4;
  return { greyAt: (x, y) => pgm[first + y * width + x] ?? 255, across: perMm, down: perMm };
}
