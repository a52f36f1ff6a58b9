import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { tubePins } from "./tube-pins.ts";

/** The sound tube with a base. from-memory: 6X4, 5BS. */
const based = (pins: string, socket = '"miniature 7-pin"', mark = '"pins"') =>
  [
    '"class": "rectifier",',
    `"class": "rectifier",\n  "base": { "code": "5BS", "socket": ${socket}, ${mark}: { ${pins} }, "source": "from-memory" },`,
  ] as const;
const PINS = '"1": "plate-1", "3": "heater", "4": "heater", "6": "plate-2", "7": "cathode"';

testRule(tubePins, {
  fires: [
    {
      name: "a misspelt function",
      file: AT.tube,
      change: [based(PINS.replace('"plate-1"', '"«plat-1»"'))],
      nearest: "plate",
    },
    { name: "one of two functions", file: AT.tube, change: [based(PINS.replace('"cathode"', '"cathode and «shel»"'))], nearest: "shell" },
    { name: "a pin that the socket has not", file: AT.tube, change: [based(PINS.replace('"7":', '«"9"»:'))] },
    { name: "no such socket", file: AT.tube, change: [based(PINS, '«"octel"»')], nearest: "octal" },
    {
      name: "one end of the heater alone",
      file: AT.tube,
      change: [based(PINS.replace('"3": "heater", ', ""), undefined, '«"pins"»')],
      says: "heater",
    },
    { name: "no cathode", file: AT.tube, change: [based(PINS.replace(', "7": "cathode"', ""), undefined, '«"pins"»')], says: "cathode" },
    { name: "no plate", file: AT.tube, change: [based(PINS.replace(/"plate-\d"/g, '"shield"'), undefined, '«"pins"»')], says: "plate" },
  ],
  passes: [
    { name: "a tube without a base", file: AT.tube },
    { name: "all its electrodes", file: AT.tube, change: [based(PINS)] },
    {
      name: "a cap, a tap, nothing at a pin",
      file: AT.tube,
      change: [based(`${PINS}, "2": "none", "5": "heater centre tap", "cap": "plate-1"`)],
    },
  ],
});
