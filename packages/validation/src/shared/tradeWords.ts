/** Words of the trade for what the schemas' choices call otherwise. common-practice. */
const CHOICE_OF: Readonly<Record<string, string>> = {
  condenser: "capacitor",
  cap: "capacitor",
  valve: "tube",
  choke: "inductor",
  coil: "inductor",
  pot: "potentiometer",
  control: "potentiometer",
  diode: "rectifier",
  bulb: "lamp",
  flex: "cord",
  lead: "wire",
  ntc: "thermistor",
  ohms: "resistance",
  resistance: "ohms",
  capacity: "capacitance",
  inductivity: "inductance",
  volts: "dc-volts",
  voltage: "dc-volts",
  ripple: "ripple-volts",
  hum: "ripple-volts",
  current: "dc-amps",
  leak: "leaky",
  shorted: "short",
  critical: "danger",
  warning: "watch",
};

/** The choice that a word of the trade stands for. @returns undefined for any other word */
export function choiceOf(written: string): string | undefined {
  const word = written.trim().toLowerCase();
  return Object.hasOwn(CHOICE_OF, word) ? CHOICE_OF[word] : undefined;
}
