/**
 * Makes every generated file: the record types from schemas/, the compiled validator of jobs, the lists of checks and of formulas from their folders.
 *
 *     npm run generate              writes what has changed
 *     npm run generate -- --check   writes nothing, fails naming each file that differs
 */
import { argv, exit } from "node:process";
import { checkListFile } from "./generate/checkListFile.ts";
import { formulaListFiles } from "./generate/formulaListFiles.ts";
import { settle } from "./generate/settle.ts";
import { typeFiles, typeFolder } from "./generate/typeFiles.ts";
import { validatorFiles, validatorFolder } from "./generate/validatorFile.ts";

const checkOnly = argv.includes("--check");
exit(
  Math.max(
    settle([...(await typeFiles()), ...checkListFile(), ...formulaListFiles()], typeFolder, checkOnly),
    settle(validatorFiles(), validatorFolder, checkOnly),
  ),
);
