/**
 * Makes every generated file: the record types from schemas/, the compiled validators of jobs and records, the lists of checks, formulas and
 * rules from their folders, the table of figures in DEVELOPERS.md.
 *
 *     npm run generate              writes what has changed
 *     npm run generate -- --check   writes nothing, fails naming each file that differs
 */
import { argv, exit } from "node:process";
import { checkListFile } from "./generate/checkListFile.ts";
import { figureTableFile } from "./generate/figureTable.ts";
import { formulaListFiles } from "./generate/formulaListFiles.ts";
import { ruleListFile } from "./generate/ruleListFile.ts";
import { settle } from "./generate/settle.ts";
import { typeFiles, typeFolder } from "./generate/typeFiles.ts";
import { recordValidatorFiles, recordValidatorFolder, validatorFiles, validatorFolder } from "./generate/validatorFile.ts";

const checkOnly = argv.includes("--check");
exit(
  Math.max(
    settle([...(await typeFiles()), ...checkListFile(), ...formulaListFiles(), ...ruleListFile()], typeFolder, checkOnly),
    settle(figureTableFile(), undefined, checkOnly),
    settle(validatorFiles(), validatorFolder, checkOnly),
    settle(recordValidatorFiles(), recordValidatorFolder, checkOnly),
  ),
);
