/** The pins that the simulation knows, by kind; a suppressor is taken to lie on its cathode. Other kinds have two leads, a and b. */
export const PINS: Readonly<Record<string, readonly string[]>> = {
  tube: ["plate", "screen", "grid", "cathode", "suppressor"],
  rectifier: ["plate", "plate-1", "plate-2", "cathode", "a", "b"],
  "regulator-tube": ["anode", "cathode", "a", "b"],
  zener: ["anode", "cathode", "a", "b"],
  potentiometer: ["a", "wiper", "b"],
  cord: ["hot-in", "hot-out", "neutral-in", "neutral-out", "earth-in", "earth-out"],
};

/** Sets of pins of which one must be whole, or the part would lie nowhere in the network. */
export const NEEDED_PINS: Readonly<Record<string, readonly (readonly string[])[]>> = {
  tube: [["plate", "cathode"]],
  rectifier: [
    ["plate", "cathode"],
    ["plate-1", "cathode"],
    ["plate-2", "cathode"],
    ["a", "b"],
  ],
  "regulator-tube": [
    ["anode", "cathode"],
    ["a", "b"],
  ],
};

/** Other words of the trade for the same electrode (common-practice). */
export const PIN_SYNONYMS: Readonly<Record<string, string>> = {
  anode: "plate",
  "anode-1": "plate-1",
  "anode-2": "plate-2",
  plate: "anode",
  filament: "cathode",
  kathode: "cathode",
  k: "cathode",
  p: "plate",
  a1: "plate-1",
  a2: "plate-2",
  g: "grid",
  g1: "grid",
  g2: "screen",
  g3: "suppressor",
};
