import { resistorRole } from "../resistorRole.ts";

/** Where the value sets a voltage: 10 % at most (rule R6). */
export const bias = resistorRole({
  id: "bias",
  title: "Cathode, bias, AVC, divider or meter resistor",
  closest: 0.1,
  limitRule: { text: "within 10 %, or the old tolerance where that is closer: the value sets a voltage", source: "common-practice" },
  times: 2,
  make: ["metal film, 5 % or closer"],
  rules: [
    { text: "meter shunts and multipliers keep their exact value: close-tolerance parts, or two combined", source: "common-practice" },
  ],
});
