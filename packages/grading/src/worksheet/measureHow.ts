/**
 * How each measurement is made, in a line. common-practice throughout: power off and filters discharged for all of them, so that it
 * is said once at the head of the sheet.
 */
const HOW: Readonly<Record<string, string>> = {
  resistance: "one end lifted; in circuit only for a first look",
  capacitance: "one lead lifted, discharged",
  leakage: "one lead lifted, at its working voltage through a series resistor; discharge it afterwards",
  esr: "discharged; most meters read it in circuit",
  inductance: "one end lifted, on a bridge at low current",
  dcr: "one end lifted where something lies in parallel",
  emission: "out of its socket, on a tube tester, warmed up",
  continuity: "across it, by ohmmeter",
  insulation: "all its leads lifted, to frame or chassis, with an insulation tester; semiconductors disconnected",
};

/** What a part beyond the templates is asked for, by its kind. common-practice. */
const USUAL: Readonly<Record<string, readonly string[]>> = {
  resistor: ["resistance"],
  potentiometer: ["resistance"],
  capacitor: ["capacitance", "leakage"],
  inductor: ["dcr", "insulation"],
  transformer: ["dcr", "insulation"],
  rectifier: ["continuity"],
  tube: ["emission"],
  "regulator-tube": ["emission"],
  fuse: ["continuity"],
  breaker: ["continuity"],
  switch: ["continuity"],
  thermistor: ["resistance"],
  lamp: ["continuity"],
  cord: ["continuity", "insulation"],
};

/** How a measurement is made; "" for one without words here. */
export const measureHow = (quantity: string): string => (Object.hasOwn(HOW, quantity) ? (HOW[quantity] ?? "") : "");

export const usualMeasures = (kind: string): readonly string[] => (Object.hasOwn(USUAL, kind) ? (USUAL[kind] ?? []) : []);
