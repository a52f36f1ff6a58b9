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
    { name: "in capitals", file: AT.caution, change: [["Measure before touching.", "It is then «SAFE» to touch."]] },
    { name: "in other words", file: AT.caution, change: [["Measure before touching.", "A film capacitor there is «harmless»."]] },
    { name: "no risk", file: AT.caution, change: [["Measure before touching.", "There is «no risk» then, and it «cannot hurt»."]] },
  ],
  passes: [{ name: "a word that only begins so", file: AT.caution, change: [["Measure before touching.", "Put the safelight away."]] }],
});
