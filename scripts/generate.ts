/**
 * Makes every generated file: the record types from schemas/, the list of checks from their folder.
 *
 *     npm run generate              writes what has changed
 *     npm run generate -- --check   writes nothing, fails naming each file that differs
 */
import { argv, exit } from "node:process";
import { checkListFile } from "./generate/checkListFile.ts";
import { settle } from "./generate/settle.ts";
import { typeFiles, typeFolder } from "./generate/typeFiles.ts";

exit(settle([...(await typeFiles()), ...checkListFile()], typeFolder, argv.includes("--check")));
