import { loadDataset } from "@underchassis/dataset/load";
import { readCaseFile } from "../tests/suspects/cases/caseFile.ts";
import { CaseMaker } from "../tests/suspects/cases/caseMaker.ts";
import { CHASSIS_IDS } from "../tests/suspects/chassisFiles.ts";
const ds = loadDataset();
for (const id of CHASSIS_IDS) console.log(id, readCaseFile(id)?.netlist === new CaseMaker(id, ds).netlist);
