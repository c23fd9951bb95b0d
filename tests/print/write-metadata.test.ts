/** What a file says of itself in XML, whatever its title. */
import { expect, it } from "vitest";
import { metadataXml } from "../../src/print/pdf/write/write-metadata.ts";

it.each([
  ["a plain title", "Everyday strip · A5", "Everyday strip · A5"],
  ["signs of XML", `"Peas" & <beans> ]]>`, "&quot;Peas&quot; &amp; &lt;beans&gt; ]]&gt;"],
  ["what XML has no place for", "Be\u0000ans\u000c\ufffe", "Beans"],
  ["half a pair", "Peas \ud800", "Peas \ufffd"],
])("%s stands in it as XML has it", (_, title, written) => {
  expect(metadataXml(title)).toContain(`<rdf:li xml:lang="x-default">${written}</rdf:li>`);
});
