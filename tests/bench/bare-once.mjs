/** The least that Eleventy can do for the same files: each is a ready string, each is a page: `node bare-once.mjs FINISHED OUTPUT`. */
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { join, relative } from "node:path";
import { Eleventy } from "@11ty/eleventy";
import { tellCost } from "./tell-cost.mjs";

const [finished, output] = process.argv.slice(2);
const input = mkdtempSync(join(output, "..", "bare-"));
process.chdir(input);

const files = readdirSync(finished, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile())
  .map((entry) => relative(finished, join(entry.parentPath, entry.name)));
const isText = (path) => /\.(html|svg|json|css|js|txt)$/.test(path);

const eleventy = new Eleventy(".", relative(input, output), {
  quietMode: true,
  configPath: false,
  config: (cfg) => {
    cfg.addGlobalData("files", () =>
      files
        .filter(isText)
        .map((path) => ({ path, text: readFileSync(join(finished, path), "utf8") })),
    );
    cfg.addTemplate("all.11ty.js", {
      data: {
        pagination: { data: "files", size: 1, alias: "file" },
        permalink: ({ file }) => file.path,
      },
      render: ({ file }) => file.text,
    });
    for (const path of files.filter((path) => !isText(path))) {
      cfg.addPassthroughCopy({ [relative(input, join(finished, path))]: path });
    }
  },
});
await eleventy.write();
tellCost();
rmSync(input, { recursive: true, force: true });
