import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { nestingAndLength } from "./nesting-and-length.ts";

testRule(nestingAndLength, {
  fires: [{ name: "forty-one levels", file: AT.manifest, text: `{\n  "a": ${"[".repeat(39)}«[»${"]".repeat(40)}\n}\n` }],
  passes: [{ name: "forty levels", file: AT.manifest, text: `{\n  "a": ${"[".repeat(39)}${"]".repeat(39)}\n}\n` }],
});
