import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { symbolicLink } from "./symbolic-link.ts";

testRule(symbolicLink, {
  fires: [{ name: "a link", file: "datasets/tubes/6x5.json", text: { link: true }, whole: true }],
  passes: [{ name: "a plain file", file: AT.tube, change: [['"EZ90"', '"EZ91"']] }],
});
