import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { plainCharacters } from "./plain-characters.ts";

testRule(plainCharacters, {
  fires: [
    { name: "a micro sign", file: AT.stage, change: [["40 uF 250 V", "40 «µ»F 250 V"]], nearest: "u" },
    { name: "an ohm sign", file: AT.stage, change: [["1 kohm 2 W", "1 k«Ω» 2 W"]], nearest: "ohm" },
  ],
  passes: [{ name: "a Cyrillic letter, which has its own rule", file: AT.tube, change: [["Full", "Fуll"]] }],
});
