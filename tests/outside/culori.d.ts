/** The few functions of culori 4 that the tests use; the package brings no types. */
declare module "culori" {
  interface Rgb {
    readonly mode: "rgb";
    readonly r: number;
    readonly g: number;
    readonly b: number;
  }
  interface Lab65 {
    readonly mode: "lab65";
    readonly l: number;
    readonly a: number;
    readonly b: number;
  }
  type Colour = string | Rgb | Lab65;
  export function differenceCiede2000(): (a: Colour, b: Colour) => number;
  export function wcagContrast(a: Colour, b: Colour): number;
  export function filterDeficiencyDeuter(severity: number): (colour: string) => Rgb;
  export function filterDeficiencyProt(severity: number): (colour: string) => Rgb;
  export function filterDeficiencyTrit(severity: number): (colour: string) => Rgb;
}
