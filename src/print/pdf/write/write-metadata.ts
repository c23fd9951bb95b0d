/** What a PDF file says of itself in XML, for programs that read no PDF. */
import type PDFDocument from "pdfkit";
import { escapedXml, xmlText } from "../../../draw/svg/xml-text.ts";

/** The title, and that the file is made by the rules of PDF/UA-1 (ISO 14289-1, 5): who cannot see it can have it read. No date: a build has no clock. */
export function writeMetadata(pdf: PDFDocument, title: string): void {
  const packet = pdf.ref({ Type: "Metadata", Subtype: "XML" });
  // Programs look for it without reading PDF (ISO 32000-1, 14.3.2).
  packet.compress = false;
  packet.end(new TextEncoder().encode(metadataXml(title)));
  pdf._root.data.Metadata = packet;
}

/** ISO 16684-1: a packet that nobody is to write into. */
export function metadataXml(title: string): string {
  return `<?xpacket begin="\ufeff" id="W5M0MpCehiHzreSzNTczkc9d"?>
<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
<dc:title><rdf:Alt><rdf:li xml:lang="x-default">${escapedXml(xmlText(title))}</rdf:li></rdf:Alt></dc:title>
<pdfuaid:part>1</pdfuaid:part>
</rdf:Description>
</rdf:RDF></x:xmpmeta>
<?xpacket end="r"?>`;
}
