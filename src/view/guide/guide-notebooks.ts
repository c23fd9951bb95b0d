/** The notebooks on which the guide draws its examples: few dots and round numbers, so that every step can be counted. */
import { reportIssues } from "../../issue/report/report.ts";
import type { Notebook } from "../../notebook/notebook.ts";
import { readNotebook } from "../../notebook/read-notebook.ts";

/** Files like any other, by the name that an example calls them by. */
const FILES: Readonly<Record<string, string>> = {
  square: `---
title: Square, 24 × 24
paper: [125, 125]
pitch: 5
dots: [24, 24]
firstDot: [5, 5]
---
`,
  a5: `---
title: A5, 26 × 38
paper: A5
pitch: 5
dots: [26, 38]
firstDot: [11.5, 12.5]
---
`,
  a6: `---
title: A6, 20 × 28
paper: A6
pitch: 5
dots: [20, 28]
---
`,
  card: `---
title: Card, 12 × 8
paper: [65, 45]
pitch: 5
dots: [12, 8]
count: dot-to-dot
binding: none
---
`,
  "jis-b5": `---
title: JIS B5, 35 × 49
paper: JIS-B5
pitch: 5
dots: [35, 49]
middle: both
---
`,
};

/** The notebook of that name. Throws where an example names one that the guide does not have. */
export function guideNotebook(name: string): Notebook {
  const text = FILES[name];
  if (text === undefined) throw new RangeError(`the guide has no notebook ${name}`);
  const path = `notebooks/${name}.md`;
  const reading = readNotebook({ path, text });
  if (!reading.ok) throw new Error(reportIssues(reading.issues, new Map([[path, text]])));
  return reading.value;
}
