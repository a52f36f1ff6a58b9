import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { valuePlausible } from "./value-plausible.ts";

/** The same without its side. */
const plain = (typical: string) => {
  const [from, to] = capacitor(typical);
  return [from, to.replace('"polarised": true,\n      ', "")] as const;
};

const capacitor = (typical: string) =>
  [
    '"typical": "40 uF 250 V",\n      "polarised": true,\n      "source": "common-practice"\n    },\n    {\n      "role": "filter',
    `"typical": ${typical},\n      "polarised": true,\n      "source": "common-practice"\n    },\n    {\n      "role": "filter`,
  ] as const;

testRule(valuePlausible, {
  fires: [
    { name: "more than any filter holds", file: AT.stage, change: [capacitor('«"40000 uF 25 V"»')], says: "such a value" },
    { name: "a resistor of thousands of megohms", file: AT.stage, change: [['"1 kohm 2 W"', '«"5000 Mohm 2 W"»']] },
    { name: "an electrolytic without a side", file: AT.stage, change: [plain('«"40 uF 250 V"»')], says: "no positive side" },
    { name: "a thousandth of an ohm", file: AT.stage, change: [['"1 kohm 2 W"', '«"1 mohm 2 W"»']] },
    { name: "a capacitor without its voltage", file: AT.stage, change: [capacitor('«"40 uF"»')], says: "voltage" },
  ],
  passes: [
    { name: "paper in oil", file: AT.stage, change: [plain('"16 uF 700 V oil"')] },
    { name: "a large one", file: AT.stage, change: [capacitor('"4000 uF 25 V"')] },
    { name: "a resistor without its watts, which a meter's movement has not", file: AT.stage, change: [['"1 kohm 2 W"', '"100 ohm"']] },
  ],
});
