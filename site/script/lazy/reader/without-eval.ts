/** To be imported first where a page's policy refuses code that is made at run time: zod does without it then. */
import { config } from "zod";

// Before any shape is made: zod tries otherwise, and a browser tells of the refusal.
config({ jitless: true });
