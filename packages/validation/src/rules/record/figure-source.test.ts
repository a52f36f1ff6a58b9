import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { figureSource } from "./figure-source.ts";

testRule(figureSource, {
  fires: [
    {
      name: "a typical value",
      file: AT.stage,
      change: [['"typical": "1 kohm 2 W",\n      "source": "common-practice"', '«"typical"»: "1 kohm 2 W"']],
    },
    {
      name: "parameters",
      file: AT.tube,
      change: [['"parameters": { "perveance": 0.0006784 }, "source": "from-memory"', '«"parameters"»: { "perveance": 0.0006784 }']],
    },
  ],
  passes: [
    {
      name: "a part with nothing typical",
      file: AT.tube,
      change: [['"parameters": { "perveance": 0.0006784 }, "source": "from-memory"', '"source": "from-memory"']],
    },
  ],
});
