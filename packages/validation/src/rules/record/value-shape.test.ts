import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { valueShape } from "./value-shape.ts";

testRule(valueShape, {
  fires: [
    { name: "capitals in an id", file: AT.stage, change: [['"id": "hum"', '"id": «"Hum"»']], nearest: "hum" },
    {
      name: "milliamperes a volt",
      file: AT.tube,
      change: [['"typical": []', '"typical": [{ "service": "class A", "plateVolts": 250, "siemens": «1.6», "source": "from-memory" }]']],
      nearest: "0.0016",
    },
    {
      name: "micromhos",
      file: AT.tube,
      change: [['"typical": []', '"typical": [{ "service": "class A", "plateVolts": 250, "siemens": «1600», "source": "from-memory" }]']],
      nearest: "0.0016",
    },
    { name: "an empty list", file: AT.tube, change: [['["6X4", "EZ90"]', "«[]»"]] },
  ],
  passes: [{ name: "a longer id", file: AT.stage, change: [['"id": "hum"', '"id": "hum-2"']] }],
});
