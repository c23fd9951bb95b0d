/**
 * Mutants that no test can tell from the code as it stands, each with the reason why. Where a line has the same
 * mistake in several places, `nth` says which of them is meant, from 0; without it all are.
 */
const BY_FILE = {
  "src/divide/divide.ts": [
    [
      "const sums = largestSums(kinds, question.length - needs);",
      ["-", "+"],
      "a longer table begins as the shorter one does",
    ],
    [
      'const sizes = question.tracks.map((size) => (size.kind === "steps" ? size.steps : 0));',
      ["0", "1"],
      "the size of every share track is written over this",
    ],
  ],
  "src/divide/division-table.ts": [
    [
      "const counts = Array.from({ length: Math.floor(length / 2) }, (_, i) => i + 1).slice(1);",
      ["Math.floor", "Math.ceil"],
      "more parts than half the steps are shorter than two, and are left out below",
    ],
    [
      "const counts = Array.from({ length: Math.floor(length / 2) }, (_, i) => i + 1).slice(1);",
      ["/", "*"],
      "the same",
    ],
    [
      'const size: ShareSize = { kind: "share", weight: 100, min: 1, max: Number.POSITIVE_INFINITY };',
      ["100", "101"],
      "equal shares are equal whatever they are",
    ],
  ],
  "src/divide/alike-tracks.ts": [
    [
      "const factor = groups.reduce((so, { size }) => commonFactor(so, size.weight), 0);",
      ["0", "1"],
      "shares that keep their common factor mean the same; the numbers are only larger",
    ],
  ],
  "src/divide/largest-sums.ts": [
    [
      "const reached = new Uint8Array(most + 1);",
      ["1", "2"],
      "nobody reads behind the number of spare steps",
    ],
    ["reached[0] = 1;", ["1", "2"], "any number but 0 says that a sum is reached"],
    ["let largest = 0;", ["0", "1"], "the first sum is reached, and written over this"],
    [
      "for (let sum = stride; sum < reached.length; sum++) {",
      ["<", "<="],
      "an array of bytes takes nothing behind its end",
    ],
    ["reached[sum] = 1;", ["1", "2"], "any number but 0 says that a sum is reached"],
  ],
  "src/divide/least-squares.ts": [
    [
      "const cost = extras.reduce((sum, extra, k) => sum + (costs[k]?.[extra] ?? 0), 0);",
      ["0", "1"],
      "distances are only compared, and all of one split grow alike",
    ],
    [
      "const most = Math.min(kind.max - kind.min, Math.floor(spare / kind.count));",
      ["Math.floor", "Math.ceil"],
      "nobody reads what costs more steps than there are",
    ],
    [
      "const most = Math.min(kind.max - kind.min, Math.floor(spare / kind.count));",
      ["/", "*"],
      "the same",
    ],
    [
      "let table: Float64Array = new Float64Array(spare + 1).fill(Number.POSITIVE_INFINITY);",
      ["1", "2"],
      "nobody reads behind the number of spare steps",
    ],
    ["table[0] = 0;", ["0", "1"], "all costs grow alike, and are only compared", 1],
    [
      "for (let k = kinds.length - 1; k > 0; k--) {",
      ["-", "+"],
      "a kind that is not there adds nothing, and its table lies behind the others",
    ],
    [
      "table = addConvex(table, costs[k] ?? new Float64Array(1), kinds[k]?.count ?? 1);",
      ["1", "2"],
      "every kind is there: what stands for a missing one is never used",
    ],
    ["const cost = costs[k] ?? new Float64Array(1);", ["1", "2"], "the same"],
    ["const after = rest[k] ?? new Float64Array(1);", ["1", "2"], "the same"],
    ["let best = -1;", ["1", "2"], "any number below 0 says that nothing was found"],
  ],
  "src/divide/min-plus.ts": [
    [
      "const last = Math.floor((table.length - 1 - remainder) / stride);",
      ["Math.floor", "Math.ceil"],
      "rows behind the end are written nowhere, and bound the others no more closely",
    ],
    ["const last = Math.floor((table.length - 1 - remainder) / stride);", ["-", "+"], "the same"],
    ["const last = Math.floor((table.length - 1 - remainder) / stride);", ["/", "*"], "the same"],
    ["let best = -1;", ["1", "2"], "any number below 0 says that nothing was found"],
    [
      "if (whole < least) {",
      ["<", "<="],
      "of equal columns the last bounds as well as the first: best columns run to the right",
    ],
    [
      "halve(chain, [low, middle - 1], [js[0], best < 0 ? last : best]);",
      ["<", "<="],
      "the bound is wider, and what it lets in is no better",
    ],
    [
      "halve(chain, [low, middle - 1], [js[0], best < 0 ? last : best]);",
      ["0", "1"],
      "the same",
      1,
    ],
    [
      "halve(chain, [middle + 1, high], [best < 0 ? first : best, js[1]]);",
      ["<", "<="],
      "where the best column is 0 it is the first",
    ],
    ["halve(chain, [middle + 1, high], [best < 0 ? first : best, js[1]]);", ["0", "1"], "the same"],
  ],
  "src/divide/spread-evenly.ts": [
    ["return 2 * i < places", ["<", "<="], "in the very middle both ways of rounding meet"],
  ],
};

export const EQUIVALENT = Object.entries(BY_FILE).flatMap(([file, rows]) =>
  rows.map(([code, [from, to], reason, nth]) => ({ file, code, from, to, reason, nth })),
);
