/** The licences of other people's work that a book passes on: the packages inside its scripts, and its typefaces. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { PROJECT } from "./kept-bundle.mjs";

const HEAD = `The pages, drawings and files of this book belong to those who wrote its recipes.
Inside its styles and scripts there is work of other people, which may be passed on under the licences below.
`;

/** One text for all packages that the inputs of a bundle come from, the program itself first. */
export function gatherLicences(inputs) {
  const folders = new Set(inputs.flatMap((input) => packageFolder(input) ?? []));
  const parts = [part("Spanbook", "", PROJECT)];
  for (const folder of [...folders].sort()) {
    const { name, version } = JSON.parse(
      readFileSync(join(PROJECT, folder, "package.json"), "utf8"),
    );
    parts.push(part(name, version, join(PROJECT, folder)));
  }
  return [HEAD, ...parts].join("\n");
}

/** `node_modules/@scope/name`, however deep; none for the program's own files. */
function packageFolder(input) {
  return /^(?:.*\/)?node_modules\/(?:@[^/]+\/)?[^/]+/.exec(input)?.[0];
}

/** Throws where a package has no licence to show: it could not be passed on. */
function part(name, version, folder) {
  const file = readdirSync(folder).find((entry) => /^(licen[cs]e|copying)/i.test(entry));
  const text = file ? readFileSync(join(folder, file), "utf8").trim() : licenceName(folder);
  const title = `${name} ${version}`.trim();
  return `${title}\n${"-".repeat(title.length)}\n\n${text}\n`;
}

function licenceName(folder) {
  const path = join(folder, "package.json");
  const { license } = existsSync(path) ? JSON.parse(readFileSync(path, "utf8")) : {};
  if (typeof license !== "string") throw new Error(`${folder} does not say its licence`);
  return `Licence: ${license}`;
}
