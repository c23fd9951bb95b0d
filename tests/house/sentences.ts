/** Sentences for people stand in one place: whoever draws, plans or prints asks `src/issue/words` for them. */

/** The folders that ask for their words, and what may stand in them: the meaning of a key, and names of a table. */
const SILENT =
  /^src\/(measure|divide|source|calendar|notebook|recipe|plan|strip|setup|draw|print)\//;
const TABLES = /-keys\.ts$|^src\/calendar\/(names\/|moon-names\.ts)/;

/** A text in quotes that begins with a capital and goes on with a word. */
const SENTENCE = /["`][A-Z][a-z’]*,? [a-z]+[^"`]*["`]/;

/** What a developer reads, not a keeper; and what another program says. */
const FOR_DEVELOPERS = /\b\w*Error\(|\.includes\(/;

/** A sentence for each file that holds a text for people where none belongs. */
export function sentenceIssues(files: ReadonlyMap<string, string>): readonly string[] {
  return [...files].flatMap(([path, text]) => {
    if (!SILENT.test(path) || TABLES.test(path)) return [];
    const lines = text.replace(/\/\*[\s\S]*?\*\//g, "").split("\n");
    const said = lines.find(
      (line) => SENTENCE.test(line.replace(/\/\/.*$/, "")) && !FOR_DEVELOPERS.test(line),
    );
    return said ? [`${path}: holds a sentence: ${said.trim()}`] : [];
  });
}
