/** Content of any size for the measurements: a book's own recipes and notebooks, taken round again under new names. */
import { cpSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";

/** Writes so many patterns and notebooks into a folder; the strips are the book's own. */
export function writeSizedContent(book, folder, { patterns, notebooks }) {
  mkdirSync(folder, { recursive: true });
  cpSync(join(book, "strips"), join(folder, "strips"), { recursive: true });
  writeFileSync(join(folder, "book.yaml"), "title: Bench\npatterns: all\n");
  const strips = readdirSync(join(book, "strips"));
  const onStrips = strips.map((name) => readFileSync(join(book, "strips", name), "utf8")).join(" ");
  const isOnStrip = (name) => onStrips.includes(name.replace(".md", ""));
  const [recipes, papers] = ["patterns", "notebooks"].map((kind) => readdirSync(join(book, kind)));
  const stripsFirst = recipes.toSorted((one, other) => isOnStrip(other) - isOnStrip(one));
  copyRound(stripsFirst, patterns, { from: join(book, "patterns"), to: join(folder, "patterns") });
  copyRound(papers, notebooks, {
    from: join(book, "notebooks"),
    to: join(folder, "notebooks"),
    change: fewerDots,
  });
}

/** The first of the files, or all of them and then again, changed by how many times they have been taken. */
function copyRound(names, count, { from, to, change = (text) => text }) {
  mkdirSync(to, { recursive: true });
  for (let index = 0; index < count; index += 1) {
    const name = names[index % names.length];
    const round = Math.floor(index / names.length);
    const text = readFileSync(join(from, name), "utf8").replace(
      /^title: .*$/m,
      (title) => title + (round ? ` ${round + 1}` : ""),
    );
    writeFileSync(
      join(to, round ? name.replace(".md", `-${round + 1}.md`) : name),
      change(text, round),
    );
  }
}

/** Another grid on the same paper, so that nothing comes out as it did before. */
function fewerDots(text, round) {
  return text.replace(
    /^dots: \[(\d+), (\d+)\]/m,
    (_, across, down) => `dots: [${across - round}, ${down - round}]`,
  );
}
