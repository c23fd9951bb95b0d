/** Hides what a pattern's page was built with while it is still being read, where another notebook is soon drawn in its place: all below would jump. */
import { openDevice } from "../device/device.ts";
import { ownNotebook } from "../device/own-notebook.ts";
import { ownAddress } from "../ui/load-script.ts";

const device = openDevice(window, ownAddress());
const { classList } = document.documentElement;
const isNamed = /[#&]paper=/.test(location.hash);
const isBuilt = /[#&]on=/.test(location.hash);

const turn = () => {
  if (!document.body) return;
  const own = ownNotebook(document, device);
  const whose = document.querySelector<HTMLElement>('[data-part="whose"]');
  if (whose) whose.hidden = !(own || isNamed);
  // The script that draws it takes the name away again.
  const isTurning = isNamed || (own && !isBuilt);
  if (isTurning && !classList.contains("turns")) classList.add("turning");
};

const observer = new MutationObserver(turn);
observer.observe(document, { childList: true, subtree: true });
document.addEventListener("DOMContentLoaded", () => observer.disconnect());
// Should what draws it not come, what was built is shown.
window.addEventListener("load", () => {
  if (!classList.contains("turns")) classList.remove("turning");
});
