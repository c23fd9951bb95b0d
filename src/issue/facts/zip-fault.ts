/** Why a zip file is not opened at all, as facts; what is wrong with a file in it is an issue of that file. */

export type ZipFault =
  /** Not a zip file, or cut off. */
  | { readonly kind: "no-zip" }
  | { readonly kind: "too-many-files"; readonly limit: number }
  /** Packed or unpacked. */
  | { readonly kind: "too-large"; readonly limitMib: number; readonly isPacked: boolean }
  /** A name that leads out of the folder that it is unpacked into. */
  | { readonly kind: "leaves-folder" | "absolute-name" | "named-twice"; readonly name: string }
  | { readonly kind: "symbolic-link" | "locked" | "unknown-packing"; readonly name: string }
  /** What comes out is not what the zip says of it. */
  | { readonly kind: "spoilt"; readonly name: string };
