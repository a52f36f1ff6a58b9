import { spawnSync } from "node:child_process";
import { createRequire } from "node:module";
import { execPath } from "node:process";

/** First line of a generated file. @param origin what it is generated from */
export const banner = (origin: string): string => `// Generated from ${origin}; run npm run generate. Changes made here are lost.`;

/** Formats source text the way biome.json asks for, as if it stood at `path`. @throws Error when it is no valid source */
export function format(text: string, path: string): string {
  const biome = createRequire(import.meta.url).resolve("@biomejs/biome/bin/biome");
  const run = spawnSync(execPath, [biome, "check", "--write", "--linter-enabled=false", `--stdin-file-path=${path}`], {
    input: text,
    encoding: "utf8",
  });
  if (run.status !== 0) throw new Error(`${path} cannot be formatted: ${run.stderr}`);
  return run.stdout;
}
