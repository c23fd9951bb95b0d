/** The part that searches: loaded when somebody does. */
import type { SearchPart } from "./search-part.ts";
import { openSearch, searchRecipes } from "./search-patterns.ts";

const part: SearchPart = { openSearch, searchRecipes };

Object.assign(window, { spanbookSearch: part });
