/** What a step can ask of a browser, whichever engine is in it: the least that a journey needs. */

export interface Engine {
  /** Opens an address and waits until it is loaded. */
  open(address: string): Promise<void>;
  /** Runs a function in the page; what goes in and comes out is JSON. */
  run<Given extends readonly unknown[], Result>(
    script: (...given: Given) => Result,
    ...given: Given
  ): Promise<Awaited<Result>>;
  /** Presses the mouse at a place of the window, in CSS pixels. */
  press(x: number, y: number): Promise<void>;
  /** Types into what has the focus; keys without a character are those of WebDriver (W3C, "Keyboard actions"). */
  type(keys: string): Promise<void>;
  /** Chooses a file of this machine in a field, as a person does. */
  choose(selector: string, path: string): Promise<void>;
  /** The size of the page in CSS pixels. */
  resize(width: number, height: number): Promise<void>;
  /** The page as a PDF, on the paper that its styles name; not every driver can print. */
  readonly print?: () => Promise<Uint8Array>;
  /** The folder into which the page's downloads go. */
  readonly downloads: string;
  /** Ends the session and every process of it. */
  close(): Promise<void>;
}

/** Keys without a character, as WebDriver has them. */
export const KEYS = {
  backspace: "\uE003",
  tab: "\uE004",
  enter: "\uE007",
  end: "\uE010",
  up: "\uE013",
  right: "\uE014",
  down: "\uE015",
} as const;
