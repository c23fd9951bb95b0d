/** The part with the editor: loaded at the recipe page alone, since it is larger than all the rest of it. */
import { openEditor } from "./code-editor.ts";
import type { EditorPart } from "./editor-part.ts";

const part: EditorPart = { openEditor };

Object.assign(window, { spanbookEditor: part });
