import { resistorRole } from "../resistorRole.ts";

/** Composition in surge places: rectifier series resistor, flash-over stopper (reference section 8.2). */
export const surge = resistorRole({
  id: "surge",
  title: "Surge or stopper resistor",
  limitRule: { text: "within the old part's tolerance", source: "common-practice" },
  times: 2,
  make: ["wirewound, or a part rated for pulses; solid composition again where inductance matters"],
  rules: [
    { text: "composition takes a pulse in its whole body, a film in its skin: ordinary film opens here", source: "film-resistor-sheets" },
    { text: "a wirewound part has inductance: not as a parasitic stopper", source: "common-practice" },
  ],
});
