/** The words for what is wrong between files. */
import type { BookIssue } from "../facts/book-issue.ts";
import type { Said } from "./said.ts";
import { sayCode, sayCodes } from "./say-code.ts";
import { sayCount, sayList } from "./say-count.ts";

/** Sentence and remedy for one. */
export function sayBookIssue(issue: BookIssue): Said {
  switch (issue.kind) {
    case "unknown-slug":
      return unknownSlug(issue);
    case "repeated-slug":
      return {
        sentence: `${sayCode(issue.slug)} is named twice.`,
        hint: `It stands in line ${issue.first.line} already: keep one of the two.`,
      };
    case "bad-pack":
      return badPack(issue);
    case "twice":
      return {
        sentence: `There is a ${WHAT[issue.what]} ${sayCode(issue.slug)} already: ${sayCode(issue.other)}.`,
        hint: "Rename one of the two files, or remove it: folders that make one book cannot share a name.",
      };
    case "ignored-in-pack":
      return ignoredInPack(issue);
    case "title-of-pattern":
      return {
        sentence: `A plain division cannot have this title: \`${issue.slug}\` is a pattern.`,
        hint: `Give it another title, or name the pattern itself: ${sayCode(`{pattern: ${issue.slug}}`)}.`,
      };
    case "moon-without-offset":
      return {
        sentence: "The date of a full moon depends on the time zone, and this book names none.",
        hint: 'Add `calendar: {utcOffset: "+00:00"}` to `book.yaml`, with the hours that your clock is ahead of UTC, or leave `{moon}` out.',
      };
    case "margin-clash":
      return marginClash(issue);
  }
}

/** Of a folder to build on that cannot be one. */
function badPack({ name, why, other }: Of<"bad-pack">): Said {
  const folder = sayCode(name);
  switch (why) {
    case "missing":
      return {
        sentence: `There is no folder ${folder} to build on.`,
        hint: "`with` names folders inside the content folder; `--with=FOLDER` names any other, from where you are.",
      };
    case "not-a-folder":
      return { sentence: `${folder} is a file, not a folder.`, hint: PARTS_OF_PACK };
    case "unreadable-folder":
      return {
        sentence: `The folder ${folder} cannot be read.`,
        hint: "It must be a folder that you are allowed to read.",
      };
    case "leaves-folder":
      return {
        sentence: `${folder} is a link that leads out of the content folder.`,
        hint: "Name the folder that it leads to by `--with=FOLDER`, or copy it into the content folder.",
      };
    case "empty":
      return { sentence: `There is nothing to build on in ${folder}.`, hint: PARTS_OF_PACK };
    case "own":
      return {
        sentence: `${folder} is one of the content's own folders, which are always read.`,
        hint: `Take it out of \`with\`. ${PARTS_OF_PACK}`,
      };
    case "same":
      return {
        sentence: `${folder} is the same folder as ${other === undefined ? "the content folder itself" : sayCode(other)}.`,
        hint: "Name it once.",
      };
  }
}

const PARTS_OF_PACK =
  "A folder to build on has `notebooks`, `patterns`, `strips` or `setups` in it.";

function ignoredInPack({ key, folders }: Of<"ignored-in-pack">): Said {
  const said = `${sayCode(key)} is not read here: of a folder that a book builds on, only the title is read`;
  return key === "with"
    ? {
        sentence: `${said}, and no folders that it builds on.`,
        hint: `Where the book needs ${sayCodes(folders)}, name ${folders.length === 1 ? "it" : "them"} for it, in its own \`with\` or by \`--with=FOLDER\`.`,
      }
    : {
        sentence: `${said}.`,
        hint: "Where it is wanted, write it into the `book.yaml` of the book itself.",
      };
}

type Of<K extends BookIssue["kind"]> = Extract<BookIssue, { kind: K }>;

function unknownSlug({ what, slug, known, nearest }: Of<"unknown-slug">): Said {
  const meant = nearest ? `Did you mean ${sayCode(nearest)}? ` : "";
  const named = known.slice(0, MOST_KNOWN);
  const rest = known.length - named.length;
  const more = rest > 0 ? ` and ${sayCount(rest, "other")}` : "";
  return {
    sentence: `There is no ${WHAT[what]} ${sayCode(slug)}.`,
    hint: `${meant}${known.length === 0 ? `The folder \`${what}s\` is empty.` : `There are ${sayCodes(named)}${more}.`}`,
  };
}

const WHAT = {
  notebook: "notebook",
  pattern: "pattern",
  strip: "strip",
  setup: "set-up",
} as const;

const MOST_KNOWN = 12;

function marginClash(issue: Of<"margin-clash">): Said {
  const { side, keys, page, binding, notebooks } = issue;
  const bound = binding === "none" ? "not bound" : `bound at the ${binding}`;
  const where = page === "single" ? "a page" : `a ${page} page`;
  const books = notebooks.slice(0, MOST_KNOWN).map(sayCode);
  return {
    sentence: `${sayList(keys.map(sayCode), "and")} land on the same side, the ${side}, of ${where} that is ${bound}.`,
    hint: `Keep one of them. ${sayList(books, "and")} ${books.length === 1 ? "is" : "are"} ${bound}.`,
  };
}
