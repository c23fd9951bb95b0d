/** Which of our own faults an error of the YAML reader stands for. */
import type { YAMLError } from "yaml";
import type { YamlFault } from "../problem/yaml-problem.ts";

export function faultOf(error: YAMLError): YamlFault {
  switch (error.code) {
    case "TAB_AS_INDENT":
      return "tab";
    case "BAD_INDENT":
      return error.message.includes("end with a") ? "not-closed" : "indent";
    case "MISSING_CHAR":
      return missingFault(error.message);
    case "BAD_DQ_ESCAPE":
      return "bad-escape";
    case "BAD_SCALAR_START":
      return "bad-start";
    case "BLOCK_AS_IMPLICIT_KEY":
    case "BLOCK_IN_FLOW":
      return "nested-on-one-line";
    case "KEY_OVER_1024_CHARS":
      return "long-key";
    case "MULTILINE_IMPLICIT_KEY":
      return "no-colon";
    case "NON_STRING_KEY":
      return "key-not-text";
    case "MULTIPLE_DOCS":
      return "several-documents";
    case "BAD_DIRECTIVE":
      return "directive";
    case "ALIAS_PROPS":
    case "BAD_ALIAS":
    case "MULTIPLE_ANCHORS":
      return "anchor";
    case "MULTIPLE_TAGS":
    case "TAG_RESOLVE_FAILED":
    case "BAD_COLLECTION_TYPE":
      return "tag";
    default:
      return "unexpected";
  }
}

/** Many marks go by one code; the reader's own words tell them apart. */
function missingFault(message: string): YamlFault {
  if (message.includes("quote")) return "open-quote";
  if (message.includes("map values")) return "no-colon";
  if (message.includes("Missing ,")) return "no-comma";
  if (message.includes("space")) return "no-space";
  return "not-closed";
}
