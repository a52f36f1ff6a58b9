#!/usr/bin/env node
import { existsSync } from "node:fs";

const main = new URL("../dist/main.js", import.meta.url);
const nodeMajor = Number(process.versions.node.split(".")[0]);

if (nodeMajor < 20) {
  console.error(`underchassis needs Node 20 or newer; this is Node ${process.versions.node}`);
  process.exitCode = 2;
} else if (!existsSync(main)) {
  console.error("underchassis has not been built: run `npm run build` in the repository (`npm ci` does it too)");
  process.exitCode = 2;
} else {
  await import(main.href);
}
