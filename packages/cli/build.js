// Bundles the command into dist/: one small entry and a chunk per subcommand, so that each starts without the others.
import { rmSync } from "node:fs";
import { build } from "esbuild";

const here = import.meta.dirname;
rmSync(`${here}/dist`, { recursive: true, force: true });
await build({
  absWorkingDir: here,
  entryPoints: ["src/main.ts"],
  outdir: "dist",
  bundle: true,
  splitting: true,
  format: "esm",
  platform: "node",
  target: "node20",
  // Some libraries' "main" is a wrapper that a bundler cannot follow; their "module" is plain ESM.
  mainFields: ["module", "main"],
  alias: { "mathjs/lib/browser/math.js": `${here}/mathjs-parser.js` },
  minify: false,
  sourcemap: false,
  logLevel: "warning",
  // Bundled CommonJS libraries may ask for node's own modules, which an ES module has no `require` for.
  banner: { js: 'import { createRequire as makeRequire } from "node:module";\nconst require = makeRequire(import.meta.url);' },
});
