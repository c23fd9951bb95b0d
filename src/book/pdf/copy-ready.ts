/** Puts PDF files that are ready from before into the book. */
import { copyFile, mkdir } from "node:fs/promises";
import { dirname, join } from "node:path";
import type { PdfMemo } from "./pdf-memo.ts";
import type { PdfTask } from "./pdf-task.ts";

/** So many copies at a time keep the disk busy and no more. */
const AT_A_TIME = 16;

/** Copies each from the memo to its place below a folder. */
export async function copyReady(
  tasks: readonly PdfTask[],
  memo: PdfMemo,
  output: string,
): Promise<void> {
  const waiting = tasks.values();
  const copyNext = async () => {
    for (const { file, key } of waiting) {
      const target = join(output, file.path);
      await mkdir(dirname(target), { recursive: true });
      await copyFile(memo.find(key) ?? "", target);
    }
  };
  await Promise.all(Array.from({ length: AT_A_TIME }, copyNext));
}
