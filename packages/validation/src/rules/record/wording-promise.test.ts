import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { wordingPromise } from "./wording-promise.ts";

testRule(wordingPromise, {
  fires: [
    { name: "a chassis", file: AT.caution, change: [["Measure before touching.", "It is then «safe» to touch."]] },
    {
      name: "behind an escaped quote mark",
      file: AT.caution,
      change: [["Measure before", 'The \\"bleeder\\" makes it «safe». Measure before']],
    },
  ],
  passes: [{ name: "a word that only begins so", file: AT.caution, change: [["Measure before touching.", "Put the safelight away."]] }],
});
