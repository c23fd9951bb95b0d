/** The words for a file that cannot be read as one. */
import type { FileIssue } from "../facts/file-issue.ts";
import type { Said } from "./said.ts";
import { sayCode } from "./say-code.ts";

/** Sentence and remedy for one. */
export function sayFileIssue(issue: FileIssue): Said {
  switch (issue.kind) {
    case "not-utf8":
      return {
        sentence: `The file is not UTF-8 text: in line ${issue.at.line} a character is in another encoding.`,
        hint: "Save it again as plain text in UTF-8.",
      };
    case "dead-link":
      return {
        sentence: "The link leads to nothing.",
        hint: "Put the file itself in its place, or take the link away.",
      };
    case "unreadable":
      return {
        sentence: "The file cannot be read.",
        hint: "It must be a plain file that you are allowed to read.",
      };
    case "leaves-folder":
      return {
        sentence: "The link leads out of the content folder.",
        hint: "Copy the file itself into the folder.",
      };
    case "not-a-folder":
      return { sentence: "This is a file, not a folder.", hint: MISSING.folder };
    case "unreadable-folder":
      return {
        sentence: "The folder cannot be read.",
        hint: "It must be a folder that you are allowed to read.",
      };
    case "misplaced":
      return {
        sentence: "The file is not read: it lies in none of the folders.",
        hint: "Put it into `notebooks`, `patterns`, `strips` or `setups`.",
      };
    case "unread-folder":
      return unreadFolder(issue);
    case "misnamed":
      return {
        sentence: `${sayCode(issue.name)} is not read: no file or folder of the content has this name.`,
        hint: `${rightPlace(issue)}, or move it out of the content folder.`,
      };
    case "missing":
      return { sentence: `This ${issue.what} is missing.`, hint: MISSING[issue.what] };
    case "empty-folder":
      return { sentence: "The folder holds no .md file.", hint: "A book needs at least one." };
    case "no-front-matter":
      return {
        sentence: "The file has no front matter.",
        hint: "Begin with a line `---`, then the keys, then another line `---`.",
      };
    case "open-front-matter":
      return {
        sentence: "The front matter has no end.",
        hint: "Put a line `---` between the keys and the text.",
      };
    case "bad-name":
      return badName(issue);
    case "too-large":
      return {
        sentence: `The file is larger than ${issue.limitKib} KiB.`,
        hint: "Make several files of it.",
      };
  }
}

const MISSING: Readonly<Record<"folder" | "file", string>> = {
  folder:
    "Content is a folder with `notebooks`, `patterns`, `strips`, `setups` and `book.yaml` in it.",
  file: "A content folder has a `book.yaml` that gives at least a title.",
};

function unreadFolder({ folder, count }: Extract<FileIssue, { kind: "unread-folder" }>): Said {
  const files =
    count === 1 ? "The file in this folder is" : `The ${count} files in this folder are`;
  return {
    sentence: `${files} not read: ${sayCode(folder)} has no folders in it.`,
    hint: `Put ${count === 1 ? "it" : "them"} into ${sayCode(folder)} itself, or move the folder out of it.`,
  };
}

function rightPlace({ better, taken }: Extract<FileIssue, { kind: "misnamed" }>): string {
  const name = sayCode(better);
  if (taken === undefined) return `Call it ${name}`;
  return taken === "folder"
    ? `There is a folder ${name} already: move what is in this one into it`
    : `There is a file ${name} already: write into it what only this one has`;
}

function badName(issue: Extract<FileIssue, { kind: "bad-name" }>): Said {
  const { name, better, isTaken, isDevice } = issue;
  const proposal = better && sayCode(better);
  const advice = isTaken
    ? `It cannot be called ${proposal}, which is taken: choose another name. `
    : `Call it ${proposal}. `;
  return {
    sentence: isDevice
      ? `${sayCode(name)} is a name that Windows keeps for a device: a book with it could not be unpacked there.`
      : `${sayCode(name)} is not a name that a page can have.`,
    hint: `${better ? advice : ""}Names end in .md and have small letters a–z, digits and hyphens, not a hyphen first.`,
  };
}
