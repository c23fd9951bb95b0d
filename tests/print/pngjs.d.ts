/** What the tests use of pngjs, which comes without types. */
declare module "pngjs" {
  export interface Picture {
    readonly width: number;
    readonly height: number;
    /** Red, green, blue and alpha of each pixel. */
    readonly data: Uint8Array;
  }

  export const PNG: {
    readonly sync: {
      read(bytes: Uint8Array): Picture;
      write(picture: Picture): Uint8Array;
    };
  };
}
