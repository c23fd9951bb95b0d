/** The words for a zip file that is not opened. */
import type { ZipFault } from "../facts/zip-fault.ts";
import { harmless } from "./harmless-text.ts";
import type { Said } from "./said.ts";

/** Why, and what would do. */
export function sayZipFault(fault: ZipFault): Said {
  switch (fault.kind) {
    case "no-zip":
      return { sentence: "This is not a zip file, or it was cut off.", hint: "Download it again." };
    case "too-many-files":
      return {
        sentence: `There are more than ${fault.limit.toLocaleString("en")} files in it.`,
        hint: "Take out the files that are not part of the book.",
      };
    case "too-large":
      return {
        sentence: fault.isPacked
          ? `It is larger than ${fault.limitMib} MB.`
          : `What is in it is larger than ${fault.limitMib} MB once it is unpacked.`,
        hint: "Take out the files that are not part of the book: a layout is a few hundred letters long.",
      };
    case "leaves-folder":
      return of(
        fault,
        "leads out of the folder",
        "Nothing in this zip was opened: pack the folder again.",
      );
    case "absolute-name":
      return of(
        fault,
        "names a place outside the zip",
        "Nothing in this zip was opened: pack the folder again.",
      );
    case "named-twice":
      return of(fault, "is in it twice", "Pack the folder again.");
    case "symbolic-link":
      return of(fault, "is a link to another place", "Put the file itself in its place.");
    case "locked":
      return of(fault, "is locked with a password", "Pack the folder again without one.");
    case "unknown-packing":
      return of(
        fault,
        "is packed in a way that this page does not know",
        "Pack it as a plain zip.",
      );
    case "spoilt":
      return of(fault, "is damaged", "Download the zip again.");
  }
}

function of({ name }: { readonly name: string }, what: string, hint: string): Said {
  return { sentence: `“${harmless(name.slice(0, LONGEST))}” ${what}.`, hint };
}

/** More of a name tells nobody more. */
const LONGEST = 120;
