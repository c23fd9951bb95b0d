/** The devices that save time: for each the edits of the source by which it can be switched off while the program runs. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { PROJECT } from "../../src/build/bundle/bundle-engine.mjs";

const CACHES = "src/build/artifacts/caches.ts";
const keptArtifacts = (kind) => [
  [CACHES, "  return {\n    patterns,", `  unlessOff(${kind});\n  return {\n    patterns,`],
  [
    CACHES,
    "/** Caches in folders",
    `function unlessOff(cache: Cache<never>) {
  const { take } = cache;
  cache.take = (sources, make) => (OFF ? make() : take(sources, make));
}
/** Caches in folders`,
  ],
];

/**
 * By name: what it is measured in, and in which file which text gives way to which. OFF stands for the question
 * whether the device is switched off.
 */
export const DEVICES = {
  threads: {
    measuredIn: "build",
    edits: [
      [
        "src/build/artifacts/prebuild/start-workers.ts",
        "length: workersFor(order, call.most)",
        "length: OFF ? 0 : workersFor(order, call.most)",
      ],
      [
        "src/build/artifacts/prebuild/start-workers.ts",
        "[ended, copied]",
        "[ended, copied, OFF && printFiles(order)]",
      ],
      [
        "src/build/artifacts/prebuild/start-workers.ts",
        "/** Other threads",
        'import { printFiles } from "../pdf/print-files.ts";\n/** Other threads',
      ],
    ],
  },
  compiler: {
    measuredIn: "build",
    edits: [["src/build/cli/v8-flags.ts", "setFlagsFromString(\n", "OFF || setFlagsFromString(\n"]],
  },
  "kept-pdfs": {
    measuredIn: "changed",
    edits: [
      [
        "src/build/artifacts/pdf/pdf-cache.ts",
        "find: (key) =>",
        "find: (key) => OFF ? undefined :",
      ],
      [
        "src/build/artifacts/pdf/pdf-cache.ts",
        "if (path !== undefined)",
        "if (path !== undefined && !OFF)",
      ],
    ],
  },
  "kept-drawings": {
    measuredIn: "changed",
    edits: [
      [
        "src/build/artifacts/cache/cache.ts",
        "?? readArtifact<Artifact>(disk, key)",
        "?? (OFF ? undefined : readArtifact<Artifact>(disk, key))",
      ],
      [
        "src/build/artifacts/cache/cache.ts",
        "disk.find(key) === undefined",
        "(OFF || disk.find(key) === undefined)",
      ],
    ],
  },
  "build-record": {
    measuredIn: "same",
    edits: [
      [
        "src/build/output/build-record.ts",
        "return disk.read(key)",
        "return !OFF && disk.read(key)",
      ],
    ],
  },
  "kept-pictures": {
    measuredIn: "changed",
    edits: [
      [
        "src/build/web/link-previews.ts",
        "if (known !== undefined)",
        "if (known !== undefined && !OFF)",
      ],
    ],
  },
  "number-runs": {
    measuredIn: "draw",
    edits: [
      [
        "src/draw/svg/number-run.ts",
        'mark.kind === "text" && turnOf',
        '!OFF && mark.kind === "text" && turnOf',
      ],
    ],
  },
  "svg-text": {
    measuredIn: "draw",
    edits: [
      [
        "src/draw/svg/write-svg.ts",
        'svgText(drawRoot(scene).node, form === "file")',
        'OFF ? drawRoot(scene).svg() : svgText(drawRoot(scene).node, form === "file")',
      ],
    ],
  },
  "solved-splits": {
    measuredIn: "draw",
    edits: [
      [
        "src/plan/layout/solve-split.ts",
        "about.asked.get(key) ??",
        "(OFF ? undefined : about.asked.get(key)) ??",
      ],
    ],
  },
  "set-words": {
    measuredIn: "print",
    edits: [
      [
        "src/print/pdf/font/print-font.ts",
        "known.get(word) ??",
        "(OFF ? undefined : known.get(word)) ??",
      ],
    ],
  },
  "held-in-memory": {
    measuredIn: "edit",
    edits: [
      [
        "src/build/artifacts/cache/cache.ts",
        "held.get(key) ??",
        "(OFF ? undefined : held.get(key)) ??",
      ],
    ],
  },
  "kept-patterns": { measuredIn: "edit", edits: keptArtifacts("patterns") },
  "kept-strips": { measuredIn: "edit", edits: keptArtifacts("strips") },
  "kept-notebooks": { measuredIn: "edit", edits: keptArtifacts("notebooks") },
  "kept-chapters": { measuredIn: "edit", edits: keptArtifacts("chapters") },
};

/** Is the device switched off? So it is asked in the bundle: by a global name, which each thread takes from the environment once. */
const WITHOUT = '((globalThis as { without?: string }).without ??= process.env.WITHOUT ?? "")';

/** The engine with a switch for this device, as `loadEngine` takes it. */
export function without(device) {
  const sources = ["src", "tests/bench"];
  return { kind: `bench-${device}`, sources, plugins: [switchFor(device)] };
}

/** A plugin of esbuild that puts a device's switch into a bundle. Throws where the source has changed, so that it does not go unseen. */
export function switchFor(device) {
  const { edits } = DEVICES[device];
  const files = new Set(edits.map(([file]) => file));
  return {
    name: `switch for ${device}`,
    setup: ({ onLoad }) => {
      for (const file of files) {
        const places = edits.filter(([where]) => where === file);
        const filter = new RegExp(`/${file.replaceAll(".", "\\.")}$`);
        onLoad({ filter }, () => ({ contents: edited(file, places, device), loader: "ts" }));
      }
    },
  };
}

function edited(file, places, device) {
  return places.reduce(
    (text, [, from, to]) => {
      if (!text.includes(from)) throw new RangeError(`${file} has no longer: ${from}`);
      return text.replace(from, () =>
        to.replaceAll("OFF", `(${WITHOUT} === ${JSON.stringify(device)})`),
      );
    },
    readFileSync(join(PROJECT, file), "utf8"),
  );
}
