/** Content of any size for the measurements: a book's own recipes and notebooks, taken round again under new names. */
import {
  copyFileSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  writeFileSync,
} from "node:fs";
import { basename, join } from "node:path";

/** Writes so many patterns and notebooks into a folder; the strips are the book's own. */
export function writeSizedContent(book, folder, { patterns, notebooks }) {
  mkdirSync(join(folder, "strips"), { recursive: true });
  const strips = filesOf(book, "strips");
  for (const file of strips) copyFileSync(file, join(folder, "strips", basename(file)));
  writeFileSync(
    join(folder, "book.yaml"),
    'title: Bench\npatterns: all\ncalendar: {utcOffset: "+00:00"}\n',
  );
  const onStrips = strips.map((file) => readFileSync(file, "utf8")).join(" ");
  const isOnStrip = (file) => onStrips.includes(basename(file, ".md"));
  const recipes = filesOf(book, "patterns");
  const stripsFirst = recipes.toSorted((one, other) => isOnStrip(other) - isOnStrip(one));
  copyRound(stripsFirst, patterns, { to: join(folder, "patterns") });
  const papers = filesOf(book, "notebooks");
  copyRound(papers, notebooks, { to: join(folder, "notebooks"), change: fewerDots });
}

/** Those of the book and of the folder that the demo builds on, by their names. */
function filesOf(book, kind) {
  const folders = [join(book, kind), join(book, "general", kind)].filter((one) => existsSync(one));
  const files = folders.flatMap((one) => readdirSync(one).map((name) => join(one, name)));
  return files.toSorted((one, other) => (basename(one) < basename(other) ? -1 : 1));
}

/** The first of the files, or all of them and then again, changed by how many times they have been taken. */
function copyRound(files, count, { to, change = (text) => text }) {
  mkdirSync(to, { recursive: true });
  for (let index = 0; index < count; index += 1) {
    const file = files[index % files.length];
    const name = basename(file);
    const round = Math.floor(index / files.length);
    const text = readFileSync(file, "utf8").replace(
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
