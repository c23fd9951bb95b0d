/** What every page does by itself: opens patterns on the keeper's own notebook, and prints. */
import { keepNotebook } from "./keep-notebook.ts";
import { openDevice } from "./page/device.ts";

keepNotebook(
  document,
  openDevice(() => localStorage),
);

for (const button of document.querySelectorAll<HTMLButtonElement>("[data-print]")) {
  button.hidden = false;
  button.addEventListener("click", () => window.print());
}
