/** What the printing uses of PDFKit, which comes without types. Lengths are in the unit of the page's current scale. */
declare module "pdfkit" {
  import type { Font } from "fontkit";

  export interface PdfReference {
    readonly data: Record<string, unknown>;
    compress: boolean;
    end(chunk?: string | Uint8Array): void;
  }

  export interface PdfStructure {
    add(child: PdfStructure | (() => void)): this;
    end(): void;
  }

  export interface PdfBookmark {
    addItem(title: string, options?: { pageNumber?: number; expanded?: boolean }): PdfBookmark;
  }

  export interface PdfOptions {
    readonly pdfVersion: "1.7";
    readonly lang: string;
    readonly tagged: boolean;
    readonly autoFirstPage: boolean;
    /** Null: no standard font is loaded. */
    readonly font: null;
    readonly info: Readonly<Record<string, string | Date>>;
  }

  export default class PDFDocument {
    constructor(options: PdfOptions);
    /** The catalogue of the file. */
    readonly _root: { readonly data: Record<string, unknown> };
    readonly page: { readonly fonts: Record<string, PdfReference> };
    readonly outline: PdfBookmark;
    /** Called at the end; may be replaced. */
    endMetadata: () => void;
    addPage(options: { readonly size: readonly [number, number]; readonly margin: 0 }): this;
    ref(data?: Record<string, unknown>): PdfReference;
    addContent(operators: string | Uint8Array): this;
    save(): this;
    restore(): this;
    scale(x: number, y: number): this;
    translate(x: number, y: number): this;
    /** In degrees, clockwise. */
    rotate(angle: number): this;
    /** Of one family there is one font in a document: the first. */
    font(font: Font, family: string, size: number): this;
    /** In the font that was named last. */
    widthOfString(text: string): number;
    text(
      text: string,
      x: number,
      y: number,
      options: { readonly lineBreak: false; readonly baseline: "alphabetic" },
    ): this;
    miterLimit(limit: number): this;
    struct(
      type: string,
      options?: { readonly title?: string; readonly alt?: string },
    ): PdfStructure;
    addStructure(structure: PdfStructure): this;
    markContent(tag: "Artifact"): this;
    endMarkedContent(): this;
    goTo(
      x: number,
      y: number,
      width: number,
      height: number,
      name: string,
      options: { readonly structParent: PdfStructure; readonly Contents: object },
    ): this;
    addNamedDestination(name: string): void;
    end(): void;
  }
}

declare module "pdfkit/output" {
  import type PDFDocument from "pdfkit";

  /** Collects what a document puts out; called before the document ends. */
  export function toBytes(document: PDFDocument): Promise<Uint8Array>;
}
