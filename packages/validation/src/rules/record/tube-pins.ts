import type { TubeRecord } from "@underchassis/dataset";
import { nearestOf, oneOf } from "@underchassis/source-text";
import type { Complaint, RecordRule } from "../../model/rule.ts";
import { electrodesOf, functionsOf, PIN_FUNCTIONS, SOCKET_PINS, unnumbered } from "../../shared/tubeBases.ts";

/** A tube's pins are on its socket and bring out its electrodes. */
export const tubePins: RecordRule = {
  code: "UC-424",
  name: "tube-pins",
  scope: "record",
  severity: "error",
  title: "Every pin of a tube is on its socket, has a function that there is, and every electrode of its class has a pin",
  why: "Whoever measures at pin 6 of the socket must find the plate there, and no heater.",
  bad: '"socket": "octal", "pins": { "9": "plat" }',
  good: '"socket": "octal", "pins": { "3": "plate" }',
  kinds: ["tube"],
  check(record) {
    const tube = record.value as TubeRecord;
    const { socket, pins } = tube.base ?? {};
    if (pins === undefined) return [];
    const count = SOCKET_PINS[socket ?? ""];
    if (count === undefined)
      return [
        {
          at: socket === undefined ? { path: ["base"], part: "key" } : { path: ["base", "socket"] },
          message: socket === undefined ? "pins without a socket" : "no socket that is known",
          ...(socket === undefined ? {} : { received: socket, nearest: nearestOf(socket, Object.keys(SOCKET_PINS)) }),
          expected: oneOf(Object.keys(SOCKET_PINS)),
        },
      ];
    const wrong = Object.entries(pins).flatMap(([pin, written]) => pinFaults(pin, written, count));
    return wrong.length > 0 ? wrong : electrodeFaults(tube, pins);
  },
};

function pinFaults(pin: string, written: string, count: number): Complaint[] {
  const onSocket = pin.startsWith("cap") || (/^[1-9]\d?$/.test(pin) && Number(pin) <= count);
  const unknown = functionsOf(written).find((word) => !PIN_FUNCTIONS.includes(unnumbered(word)));
  return [
    ...(onSocket
      ? []
      : [
          {
            at: { path: ["base", "pins", pin], part: "key" as const },
            message: `the socket has no pin "${pin}"`,
            received: pin,
            expected: `1 to ${count}, or cap`,
          },
        ]),
    ...(unknown === undefined
      ? []
      : [
          {
            at: { path: ["base", "pins", pin], within: { offset: written.indexOf(unknown), length: unknown.length } },
            message: `no pin has the function "${unknown}"`,
            received: unknown,
            expected: `${oneOf(PIN_FUNCTIONS, 30)}, numbered where there are two (plate-1)`,
            nearest: nearestOf(unnumbered(unknown), PIN_FUNCTIONS),
          },
        ]),
  ];
}

function electrodeFaults(tube: TubeRecord, pins: Readonly<Record<string, string>>): Complaint[] {
  const functions = Object.values(pins).flatMap(functionsOf);
  const present = new Set([...functions, ...functions.map(unnumbered)]);
  // A power tube's suppressor is tied to its cathode inside, or is none.
  const missing = electrodesOf(tube.class, tube.units[0]?.count === 2).filter((word) => !present.has(word));
  const { heating } = tube.heater;
  const heated = heating === "none" ? [] : [heating === "direct" ? "filament" : "heater"].filter((word) => count(functions, word) < 2);
  const cathode = heating === "indirect" && !present.has("cathode") && !present.has("triode-cathode") ? ["cathode"] : [];
  const lacking = [...new Set([...missing, ...heated, ...cathode])];
  return lacking.length === 0
    ? []
    : [
        {
          at: { path: ["base", "pins"], part: "key" },
          message: `no pin brings out ${lacking.map((word) => (heated.includes(word) ? `both ends of the ${word}` : `the ${word}`)).join(", ")}`,
          received: oneOf([...new Set(functions)], 30),
          expected: `a pin for every electrode of a ${tube.class}`,
        },
      ];
}

const count = (functions: readonly string[], word: string): number => functions.filter((each) => each === word).length;
