/** The part with the editor: loaded at the desk alone, since it is larger than all the rest of it. */
import type { EditorPart } from "../desk/editor.ts";
import { openEditor } from "./code-editor.ts";

const part: EditorPart = { openEditor };

Object.assign(window, { spanbookEditor: part });
