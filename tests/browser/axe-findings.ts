/** What axe-core objects to on a page, by the success criteria of WCAG 2.2, levels A and AA. */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright-core";
import { expect } from "vitest";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
/** Axe's names for the success criteria of WCAG 2.0, 2.1 and 2.2, levels A and AA. */
const RULES = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"];
/** Those of its rules whose answer another light or another width can change. */
const RULES_OF_LOOKS = [
  "color-contrast",
  "link-in-text-block",
  "scrollable-region-focusable",
  "target-size",
];

export interface Finding {
  readonly rule: string;
  readonly targets: readonly string[];
}

/** What axe finds on a page; it must have looked at something. It may not fetch style sheets: the page's policy forbids it. */
export async function axeFindings(page: Page): Promise<readonly Finding[]> {
  const found = await runAxe(page, RULES);
  expect(found.passes).toBeGreaterThan(8);
  return found.violations;
}

/** The same for a page that was looked at before in another light and width, by the rules for which that matters. */
export async function axeFindingsOfLooks(page: Page): Promise<readonly Finding[]> {
  const found = await runAxe(page, RULES_OF_LOOKS);
  expect(found.passes).toBeGreaterThan(0);
  return found.violations;
}

interface Found {
  /** How many rules were kept. */
  readonly passes: number;
  readonly violations: readonly Finding[];
}

async function runAxe(page: Page, rules: readonly string[]): Promise<Found> {
  const isThere = await page.evaluate(() => "axe" in window);
  if (!isThere) await page.evaluate(AXE);
  const found: unknown = await page.evaluate(
    `axe.run(document, { preload: false, resultTypes: ["violations"], runOnly: ${JSON.stringify(rules)} }).then(({ violations, passes }) => ({
      passes: passes.length,
      violations: violations.map(({ id, nodes }) => ({
        rule: id,
        targets: nodes.map((node) => node.target.join(" ") + ": " + node.failureSummary),
      })),
    }))`,
  );
  if (!isFound(found)) throw new Error("axe did not answer");
  return found;
}

function isFound(found: unknown): found is Found {
  return typeof found === "object" && found !== null && "passes" in found && "violations" in found;
}
