/** A served page with what is wrong in the content: put in as it is sent, so that no page is written anew for a mistake. */
import { htmlText } from "../web/markup-text.ts";

/** Where the layout of all pages leaves room for it. */
const ROOM = "<!-- report -->";

/** The page as it is where nothing is wrong. */
export function withReport(page: string, report: string): string {
  if (report === "") return page;
  const shown = `<section class="report" role="alert">
<strong>The pages below are the last good ones.</strong>
<pre>${htmlText(report)}</pre>
</section>`;
  return page.replace(ROOM, () => shown);
}
