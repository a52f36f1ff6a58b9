import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { nameForbidden } from "./name-forbidden.ts";

testRule(nameForbidden, {
  fires: [{ name: "a prototype", file: AT.manifest, change: [['"stage": 1', '«"__proto__"»: { "stage": 2 }, "stage": 1']] }],
  passes: [{ name: "a name like it", file: AT.manifest, change: [['"stage": 1', '"proto": 1, "stage": 1']] }],
});
