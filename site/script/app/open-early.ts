/** Opens a page on the reader's notebook while it is still being read. */
import { openDevice } from "../device/device.ts";
// So no picture of another notebook is loaded first. What it misses is opened once more when the page is whole.
import { openOnNotebook, openOnOwn } from "../device/open-on-notebook.ts";
import { keptNotebook, notebooksOf, ownNotebook } from "../device/own-notebook.ts";
import { ownAddress } from "../ui/load-script.ts";

const device = openDevice(window, ownAddress());
/** An address such as `#on=a6` asks for a notebook by itself. */
const asked = new URLSearchParams(location.hash.slice(1)).get("on");

const open = () => {
  if (!document.body) return;
  const own = ownNotebook(document, device);
  const slug =
    asked && notebooksOf(document).includes(asked) ? asked : keptNotebook(document, device);
  if (slug) openOnNotebook(document, slug, own !== undefined);
  else if (own) openOnOwn(document, own);
};

// What is going to be sifted is not shown before it is, or all would jump. Should the filter not come, all is shown.
if (/[#&](for|tag|fit|pages|lines|sort|find)=/.test(location.hash)) {
  const { classList } = document.documentElement;
  classList.add("sifting");
  window.addEventListener("load", () => {
    if (!classList.contains("choosing")) classList.remove("sifting");
  });
}

const observer = new MutationObserver(open);
observer.observe(document, { childList: true, subtree: true });
document.addEventListener("DOMContentLoaded", () => observer.disconnect());
