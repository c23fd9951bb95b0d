/** The part that knows the moon: loaded when days are picked in a book that says by which clock they are reckoned. */
import { moonAt } from "../../../../src/calendar/names/moon-names.ts";
import type { MoonPart } from "./moon-part.ts";

const part: MoonPart = { moonAt };

Object.assign(window, { spanbookMoon: part });
