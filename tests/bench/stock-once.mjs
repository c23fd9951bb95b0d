/** Eleventy without any setup on the finished files: each page is a template, the rest is copied: `node stock-once.mjs FINISHED OUTPUT`. */
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join, relative } from "node:path";
import { Eleventy } from "@11ty/eleventy";
import { tellCost } from "./tell-cost.mjs";

const [finished, output] = process.argv.slice(2);
const input = mkdtempSync(join(output, "..", "stock-"));
cpSync(finished, input, { recursive: true });
process.chdir(input);
for (const name of readdirSync(".", { recursive: true })) {
  if (!name.endsWith(".html")) continue;
  // The guide tells of braces: to a template, they would be the beginning of a command.
  const text = readFileSync(name, "utf8");
  if (/\{[{%]/.test(text)) writeFileSync(name, text.replace(/\{[{%]/g, '{{ "$&" }}'));
}

const eleventy = new Eleventy(".", relative(input, output), {
  quietMode: true,
  configPath: false,
  config: (cfg) => {
    cfg.setTemplateFormats(["html"]);
    cfg.addGlobalData(
      "permalink",
      () =>
        ({ page }) =>
          `${page.filePathStem}.html`,
    );
    for (const ending of [
      "css",
      "js",
      "json",
      "md",
      "pdf",
      "png",
      "svg",
      "txt",
      "webmanifest",
      "woff2",
    ]) {
      cfg.addPassthroughCopy(`**/*.${ending}`);
    }
  },
});
await eleventy.write();
tellCost();
rmSync(input, { recursive: true, force: true });
