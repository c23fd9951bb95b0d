/** What every page does by itself: opens patterns on the keeper's own notebook, and prints. */
import { keepNotebook } from "./keep-notebook.ts";

keepNotebook(document, localStorage);

for (const button of document.querySelectorAll<HTMLButtonElement>("[data-print]")) {
  button.hidden = false;
  button.addEventListener("click", () => window.print());
}
