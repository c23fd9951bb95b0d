/** What the guide asks of a stretch of source: the words behind its three backticks say what it is and what to draw. */

/** `wrong` is source that is meant to be refused; `on` names notebooks of the guide. */
export interface ExampleFence {
  readonly kind: "pattern" | "split" | "notebook" | "strip" | "setup" | "book" | "words";
  /** The file's name without its ending; "" where there is no file of its own. */
  readonly slug: string;
  readonly on: readonly string[];
  /** The spans of days that a dated pattern is drawn for, as a person writes them: `2027-05`. Left out: on no days. */
  readonly spans?: readonly string[];
  /** The country or region whose weeks they have; left out: ISO 8601's. */
  readonly region?: string;
  readonly isWrong: boolean;
  readonly text: string;
}

/** A drawing by its name; the text is its caption. */
export interface FigureFence {
  readonly kind: "figure";
  readonly name: string;
  readonly text: string;
}

/** Commands and addresses: shown as they are. */
interface PlainFence {
  readonly kind: "plain";
}

export type GuideFence = ExampleFence | FigureFence | PlainFence;

const EXAMPLE =
  /^yaml (?<kind>pattern|split|notebook|strip|setup|book|words)(?: (?<slug>[a-z0-9-]+))??(?: on (?<on>[a-z0-9, -]+?))?(?: for (?<spans>[0-9W, -]+?))?(?: in (?<region>[A-Z]{2}))?(?<wrong> wrong)?$/;

/**
 * Reads the words of a fence: `yaml pattern seed-list on square, a6`, `yaml pattern month on a5 for 2027-05 in US`,
 * `yaml split on a5`, `yaml notebook a5 wrong`, `figure fencepost`. Throws on YAML that does not say what it is, for then nobody would build it.
 */
export function guideFence(info: string, text: string): GuideFence {
  const words = info.trim();
  if (words.startsWith("figure ")) return { kind: "figure", name: words.slice(7), text };
  if (!words.startsWith("yaml")) return { kind: "plain" };
  const { kind, slug = "", on, spans, region, wrong } = EXAMPLE.exec(words)?.groups ?? {};
  if (!isExampleKind(kind)) throw new RangeError(`the guide does not know how to show ${words}`);
  return {
    kind,
    slug,
    on: on?.split(/, */) ?? [],
    ...(spans === undefined ? {} : { spans: spans.split(/, */) }),
    ...(region === undefined ? {} : { region }),
    isWrong: wrong !== undefined,
    text,
  };
}

function isExampleKind(kind: string | undefined): kind is ExampleFence["kind"] {
  return EXAMPLE_KINDS.some((known) => known === kind);
}

const EXAMPLE_KINDS: readonly ExampleFence["kind"][] = [
  "pattern",
  "split",
  "notebook",
  "strip",
  "setup",
  "book",
  "words",
];
