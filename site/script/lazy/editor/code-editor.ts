/** CodeMirror as the recipe page's editor: it colours the front matter, and marks problems where they are. */
import { defaultKeymap, history, historyKeymap } from "@codemirror/commands";
import { yamlFrontmatter } from "@codemirror/lang-yaml";
import { bracketMatching, indentOnInput, StreamLanguage } from "@codemirror/language";
import { type Diagnostic, lintKeymap, setDiagnostics } from "@codemirror/lint";
import { EditorState, type Extension } from "@codemirror/state";
import {
  drawSelection,
  EditorView,
  highlightActiveLine,
  keymap,
  lineNumbers,
} from "@codemirror/view";
import { type Editor, type MarkedIssue, textRangeOf } from "./editor-part.ts";
import { pens } from "./theme.ts";

/** Takes the place of a field. In a shadow root its styles need no exception from the page's policy. */
export function openEditor(field: HTMLTextAreaElement, changed: () => void): Editor {
  const host = document.createElement("div");
  host.className = "editor-host";
  const root = host.attachShadow({ mode: "open" });
  field.after(host);
  const view = new EditorView({
    root,
    parent: root,
    state: EditorState.create({
      doc: field.value,
      extensions: [
        ...EXTENSIONS,
        EditorView.domEventHandlers({ beforeinput: writeOver }),
        EditorView.contentAttributes.of({
          "aria-label": field.labels[0]?.textContent ?? "",
          tabindex: "0",
        }),
        EditorView.updateListener.of((update) => {
          if (!update.docChanged) return;
          field.value = update.state.doc.toString();
          changed();
        }),
      ],
    }),
  });
  field.hidden = true;
  field.labels[0]?.addEventListener("click", () => view.focus());
  return editorOf(view);
}

/** Tab leaves the editor, as it leaves any other field. */
const EXTENSIONS: readonly Extension[] = [
  lineNumbers(),
  history(),
  drawSelection(),
  highlightActiveLine(),
  indentOnInput(),
  bracketMatching(),
  EditorState.tabSize.of(2),
  EditorView.lineWrapping,
  keymap.of([...defaultKeymap, ...historyKeymap, ...lintKeymap]),
  yamlFrontmatter({ content: StreamLanguage.define({ token: plainLine }) }),
  pens(),
];

/**
 * Letters over a selection are put there by the editor: a browser that did it by itself would keep the look of what was
 * selected in a style attribute, which the page's policy refuses.
 */
function writeOver({ inputType, data }: InputEvent, view: EditorView): boolean {
  const { state, composing } = view;
  if (inputType !== "insertText" || data === null || composing) return false;
  if (state.selection.main.empty) return false;
  const written = state.replaceSelection(data);
  view.dispatch({ ...written, userEvent: "input.type", scrollIntoView: true });
  return true;
}

/** The text below the front matter is for reading: only its headings stand out. */
function plainLine(stream: { skipToEnd(): void; match(pattern: RegExp): unknown }): string | null {
  const isHeading = stream.match(/^#{1,6} /) !== null;
  stream.skipToEnd();
  return isHeading ? "heading" : null;
}

function editorOf(view: EditorView): Editor {
  const text = () => view.state.doc.toString();
  return {
    text,
    setText: (next) => {
      if (next === text()) return;
      view.dispatch({ changes: { from: 0, to: view.state.doc.length, insert: next } });
    },
    mark: (faults) => {
      view.dispatch(
        setDiagnostics(
          view.state,
          faults.map((fault) => diagnosticOf(text(), fault)),
        ),
      );
    },
    goTo: (place) => {
      const [anchor, head] = textRangeOf(text(), place);
      view.dispatch({ selection: { anchor, head }, scrollIntoView: true });
      view.focus();
    },
    focus: () => view.focus(),
  };
}

function diagnosticOf(text: string, { place, words }: MarkedIssue): Diagnostic {
  const [from, to] = textRangeOf(text, place);
  return { from, to, severity: "error", message: words };
}
