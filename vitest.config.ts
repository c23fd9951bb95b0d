/** Two sets of tests: those of the engine need nothing, those of the book share one book and one browser. */
import { availableParallelism } from "node:os";
import { defineConfig } from "vitest/config";

const OF_THE_BOOK = [
  "tests/build/**/*.test.ts",
  "tests/browser/**/*.test.ts",
  "tests/engines/**/*.test.ts",
  "tests/sweep/**/*.test.ts",
];

/**
 * No test measures time by a limit: a limit only ends what hangs. Nothing below the build has state of a module, so
 * files of tests share a thread and what it has loaded: that halves the work of all small ones.
 */
const SHARED = {
  pool: "threads",
  isolate: false,
  testTimeout: 180_000,
  hookTimeout: 180_000,
  expect: { poll: { timeout: 30_000 } },
} as const;

export default defineConfig({
  test: {
    // By itself vitest leaves one core to others: of two, that is half.
    maxWorkers: Math.max(2, availableParallelism()),
    projects: [
      {
        test: {
          ...SHARED,
          name: "engine",
          include: ["tests/**/*.test.ts"],
          exclude: OF_THE_BOOK,
        },
      },
      {
        test: {
          ...SHARED,
          name: "book",
          include: OF_THE_BOOK,
          globalSetup: ["tests/setup/build-books.ts", "tests/setup/open-browser.ts"],
        },
      },
    ],
  },
});
