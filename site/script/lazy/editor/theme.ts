/** The editor in the book's own pens, by day and by night: the colours are the page's. */
import { HighlightStyle, syntaxHighlighting } from "@codemirror/language";
import type { Extension } from "@codemirror/state";
import { EditorView } from "@codemirror/view";
import { tags } from "@lezer/highlight";

/** Colours of what is written, and the look of the editor around it. */
export function pens(): Extension {
  return [syntaxHighlighting(WRITTEN), LOOK];
}

/** The same four as for recipes shown elsewhere in the book. */
const WRITTEN = HighlightStyle.define([
  { tag: [tags.propertyName, tags.definition(tags.propertyName)], color: "var(--slate)" },
  { tag: [tags.number, tags.bool, tags.null], color: "var(--clay)" },
  { tag: [tags.string, tags.special(tags.string)], color: "var(--leaf)" },
  { tag: [tags.comment, tags.separator, tags.punctuation, tags.meta], color: "var(--moss)" },
  { tag: tags.heading, fontWeight: "700" },
]);

const LOOK = EditorView.theme({
  "&": {
    color: "var(--ink)",
    backgroundColor: "var(--sheet)",
    border: "1px solid var(--hair)",
    fontSize: "0.9375rem",
    height: "100%",
  },
  "&.cm-focused": { outline: "3px solid var(--slate)", outlineOffset: "2px" },
  ".cm-scroller": { fontFamily: "var(--code)", lineHeight: "1.6", overflow: "auto" },
  ".cm-content": { padding: "0.9rem 0", caretColor: "var(--clay)" },
  ".cm-line": { padding: "0 1rem 0 0.6rem" },
  ".cm-gutters": {
    color: "var(--moss)",
    backgroundColor: "transparent",
    border: "0",
    paddingLeft: "0.4rem",
  },
  ".cm-activeLine, .cm-activeLineGutter": {
    backgroundColor: "color-mix(in srgb, var(--tint) 55%, transparent)",
  },
  ".cm-cursor": { borderLeftColor: "var(--clay)", borderLeftWidth: "2px" },
  "&.cm-focused .cm-selectionBackground, .cm-selectionBackground": {
    backgroundColor: "color-mix(in srgb, var(--slate) 28%, transparent) !important",
  },
  "&.cm-focused .cm-matchingBracket": { backgroundColor: "var(--tint)", outline: "none" },
  ".cm-lintRange-error": {
    backgroundImage: "none",
    textDecoration: "underline wavy var(--clay) 1.5px",
    textUnderlineOffset: "0.22em",
    textDecorationSkipInk: "none",
  },
  ".cm-lintPoint-error:after": { borderBottomColor: "var(--clay)" },
  ".cm-tooltip": {
    color: "var(--ink)",
    backgroundColor: "var(--sheet)",
    border: "1px solid var(--stone)",
    font: "400 0.9375rem/1.4 var(--text)",
    maxWidth: "30rem",
  },
  ".cm-diagnostic-error": { borderLeft: "4px solid var(--clay)", padding: "0.5rem 0.8rem" },
});
