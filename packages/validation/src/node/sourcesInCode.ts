import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

/**
 * Whether the code of a repository's packages names a source: as a whole text in quotes.
 *
 * @param root - folder of the repository; without packages nothing is named
 * @returns a function that reads the code when it is first asked
 */
export function sourcesInCode(root: string): (id: string) => boolean {
  let quoted: Set<string> | undefined;
  return (id) => {
    quoted ??= textsInCode(root);
    return quoted.has(id);
  };
}

function textsInCode(root: string): Set<string> {
  const texts = new Set<string>();
  for (const file of codeFiles(root)) {
    for (const match of readFileSync(file, "utf8").matchAll(/["'`]([a-z0-9][a-z0-9-]*)["'`]/g)) texts.add(match[1] ?? "");
  }
  return texts;
}

function codeFiles(root: string): string[] {
  try {
    return readdirSync(join(root, "packages"))
      .filter((name) => ["calc", "grading"].includes(name))
      .flatMap((name) =>
        readdirSync(join(root, "packages", name, "src"), { recursive: true, encoding: "utf8" }).map((file) =>
          join(root, "packages", name, "src", file),
        ),
      )
      .filter((file) => file.endsWith(".ts") && !file.endsWith(".test.ts"));
  } catch {
    return [];
  }
}
