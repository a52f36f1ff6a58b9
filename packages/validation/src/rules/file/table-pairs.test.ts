import { readFileSync } from "node:fs";
import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { tablePairs } from "./table-pairs.ts";

const TABLES = "datasets/tables/tables.json";
const LINE = "datasets/tables/line-voltages.csv";
const others = { [TABLES]: readFileSync(TABLES, "utf8") };
const header = "region,fromYear,toYear,nominalVolts,lowVolts,highVolts,hertz,source\n";

testRule(tablePairs, {
  fires: [
    { name: "low and high exchanged", file: LINE, text: `${header}here,1990,,120,126,«114»,60,common-practice\n`, others },
    { name: "years that run backwards", file: LINE, text: `${header}here,1990,«1980»,120,,,60,common-practice\n`, others },
  ],
  passes: [
    { name: "an open end", file: LINE, text: `${header}here,1990,,120,114,126,60,common-practice\n`, others },
    { name: "no such columns", file: AT.bands, change: [] },
  ],
});
