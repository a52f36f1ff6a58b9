import type { Fault, FaultKind } from "./fault.ts";

/** How a suspicion becomes a finding, by kind of fault. common-practice. */
const CONFIRM: Readonly<Record<FaultKind, string>> = {
  open: "Power off, filters discharged: lift one lead and measure the part alone.",
  short: "Power off, filters discharged: lift one lead and measure the part alone.",
  "drift-high": "Power off, filters discharged: lift one lead and measure the part alone.",
  "drift-low": "Power off, filters discharged: lift one lead; if it is right alone, look for a path beside it.",
  "wrong-value": "Read the marking in good light, then lift one lead and measure.",
  leaky: "Lift one lead and measure its leakage at its working voltage; an ohmmeter's volt does not show it.",
  "lost-capacity": "Power off and discharged: lift one lead and measure its capacitance.",
  "high-esr":
    "Power off and discharged: measure its series resistance, or bridge it with a good one of the same rating before power is applied.",
  reversed: "Look at the polarity mark and follow both leads.",
  exchanged: "Read both markings where they sit, and compare with the drawing.",
  "moved-lead": "Look: follow that lead to its lug or pin and compare with the drawing; then measure ohms from the lug to both points.",
  bridge: "Look with a lamp and a lens for solder, a strand or a bent lug between the two points; measure ohms between them.",
  dead: "Look for its glow; measure heater continuity with the tube out; try a tube known to be good.",
  weak: "Test it, or try a tube known to be good.",
  gassy: "Measure the voltage across its grid leak with the tube in and out.",
  "electrode-short": "Take the tube out and measure between the two pins, cold, then in a tester, warm.",
  "shorted-turns":
    "Disconnect the load: a transformer with shorted turns stays hot and draws current with nothing connected. Use a series lamp.",
  "line-voltage": "Measure the outlet under load.",
};

/** What to do to make sure of a suspect. */
export const confirmOf = (fault: Fault): string => CONFIRM[fault.kind];

/** Cautions for making a measurement, by whether it needs power. */
export const measurementCautions = (powered: boolean): readonly string[] =>
  powered ? ["high-voltage-stored-charge", "one-hand-rule", "meter-ratings"] : ["high-voltage-stored-charge"];
