/** Functions that a pin may have, once "-1" and "-2" (unit, or number of a converter's grid) and " and " are taken apart. common-practice. */
export const PIN_FUNCTIONS: readonly string[] = [
  "anode",
  "beam-plates",
  "cathode",
  "diode-plate",
  "filament",
  "grid",
  "heater",
  "jumper",
  "none",
  "plate",
  "screen",
  "shell",
  "shield",
  "sleeve",
  "suppressor",
  "target",
  "triode-cathode",
  "triode-grid",
  "triode-plate",
];

/** Pins that a socket has. from-memory: the count is in its name, but for octal (8) and noval (9). */
export const SOCKET_PINS: Readonly<Record<string, number>> = {
  octal: 8,
  "noval 9-pin": 9,
  "miniature 7-pin": 7,
  "septar 7-pin": 7,
  "giant 7-pin": 7,
  "giant 5-pin": 5,
  "7-pin": 7,
  "6-pin": 6,
  "5-pin": 5,
  "4-pin": 4,
};

/** Electrodes that every tube of a class brings out; "grid" stands for any numbered one of a converter. common-practice. */
const ELECTRODES: Readonly<Record<string, readonly string[]>> = {
  triode: ["plate", "grid"],
  "power-triode": ["plate", "grid"],
  "twin-triode": ["plate-1", "plate-2", "grid-1", "grid-2"],
  "duo-diode-triode": ["plate", "grid", "diode-plate-1", "diode-plate-2", "cathode"],
  pentode: ["plate", "grid", "screen", "suppressor"],
  "remote-cutoff-pentode": ["plate", "grid", "screen", "suppressor"],
  "diode-pentode": ["plate", "grid", "screen", "suppressor", "diode-plate"],
  tetrode: ["plate", "grid", "screen"],
  "beam-power": ["plate", "grid", "screen"],
  "power-pentode": ["plate", "grid", "screen"],
  "triode-pentode": ["plate", "grid", "screen", "cathode", "triode-plate", "triode-grid", "triode-cathode"],
  converter: ["plate", "grid-1", "grid-2", "grid-3"],
  "electron-ray": ["plate", "grid", "target", "cathode"],
  "gas-regulator": ["anode", "cathode"],
  rectifier: ["plate"],
  "gas-rectifier": ["plate"],
  diode: ["plate"],
};

/** The functions of a pin as it is written: "cathode and suppressor" has two, "plate centre tap" is a plate. */
export function functionsOf(written: string): string[] {
  return written.split(/ and | or /).map((word) => word.replace(/ (centre )?tap$/, ""));
}

/** A function without its number: "plate-2" is a plate. */
export const unnumbered = (word: string): string => word.replace(/-\d$/, "");

/** What a tube of a class must bring out. @param twin - it has two units of one kind in it */
export function electrodesOf(tubeClass: string, twin: boolean): string[] {
  return (ELECTRODES[tubeClass] ?? []).flatMap((word) =>
    twin && (word === "plate" || (word === "grid" && tubeClass !== "rectifier")) ? [`${word}-1`, `${word}-2`] : [word],
  );
}
