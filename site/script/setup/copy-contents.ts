/** Copies the lines for the notebook's own contents. */
import { onPress, partOf, theOne } from "../ui/parts.ts";

/** Enhances the button. A title and its pages have a tab between them. */
export function bindCopyContents(page: Document, say: (words: string) => void): void {
  theOne(page, '[data-do="copy-contents"]', HTMLButtonElement).hidden = false;
  onPress(page, "copy-contents", () => {
    const lines = [...partOf(page, "contents").querySelectorAll("li")].map((line) =>
      [...line.children].map((part) => part.textContent).join("\t"),
    );
    void navigator.clipboard.writeText(lines.join("\n")).then(
      () => say("The contents are copied."),
      () => say("Select the lines and copy them: the browser does not let a page do it."),
    );
  });
}
