/** The part that searches: loaded when somebody does. */
import { openSearch } from "./search-patterns.ts";

Object.assign(window, { spanbookOpenSearch: openSearch });
