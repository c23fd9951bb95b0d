/** What saves time can be switched off to measure it: the source is still what the switches are put into. */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { DEVICES } from "../bench/devices.mjs";

describe("the switch of a device", () => {
  const edits = Object.entries(DEVICES).flatMap(([device, { edits }]) =>
    edits.map(([file, from]) => [device, file, from] as const),
  );

  it.each(edits)("for %s finds its place in %s", (_, file, from) => {
    expect(readFileSync(new URL(`../../${file}`, import.meta.url), "utf8")).toContain(from);
  });
});
