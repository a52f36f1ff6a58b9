import { formatQuantity } from "@underchassis/calc";
import type { CircuitSheet } from "@underchassis/grading";
import { visible } from "../clean/visible.ts";
import { textTable } from "../text/textTable.ts";

/** Element properties that say what it is, not where it lies. */
const PLACE = new Set(["kind", "id", "nodes", "windings"]);

/** The simulated network as text: elements with their values, then what every point and element carries. */
export function renderCircuit(sheet: CircuitSheet, width = 100): string {
  const volts = (value: number) => formatQuantity(value, "voltage", 4);
  const amps = (value: number) => formatQuantity(value, "current", 4);
  const elements = sheet.elements.flatMap((element): string[][] => {
    const windings =
      element.kind === "transformer"
        ? element.windings.map((winding) => [
            `${element.id}.${winding.id}`,
            "winding",
            winding.nodes.join(" - "),
            `turns ${winding.turns.toPrecision(5)}, ohms ${winding.ohms.toPrecision(4)}`,
          ])
        : [];
    const place =
      "nodes" in element
        ? Array.isArray(element.nodes)
          ? element.nodes.join(" - ")
          : Object.entries(element.nodes)
              .map(([pin, point]) => `${pin} ${point}`)
              .join(", ")
        : "";
    return [[element.id, element.kind, place, valuesOf(element)], ...windings];
  });
  const lines = [
    visible(`${sheet.title}: ${sheet.life}, ${sheet.condition}, line ${volts(sheet.lineVolts)} ${sheet.hertz} Hz`),
    `0 V is ${visible(sheet.reference)}. Currents balance at every point within ${sheet.currentResidual.toExponential(1)} of the largest there.`,
    ...sheet.notes.map(visible),
    "",
    ...textTable({ head: ["element", "kind", "between", "values (SI)"], rows: elements.map((row) => row.map(visible)) }, width),
    "",
    ...textTable(
      {
        head: ["point", "DC", "AC, RMS", "highest", "lowest", "ripple p-p"],
        rows: sheet.points.map((p) => [
          visible(p.point),
          volts(p.meanVolts),
          volts(p.acRmsVolts),
          volts(p.maxVolts),
          volts(p.minVolts),
          volts(p.rippleVolts),
        ]),
      },
      width,
    ),
    "",
    ...textTable(
      {
        head: ["element", "DC", "RMS", "peak", "heat"],
        rows: sheet.currents.map((c) => [
          visible(c.element),
          amps(c.meanAmps),
          amps(c.rmsAmps),
          amps(c.peakAmps),
          formatQuantity(c.watts, "power", 4),
        ]),
      },
      width,
    ),
  ];
  return `${lines.join("\n")}\n`;
}

function valuesOf(element: CircuitSheet["elements"][number]): string {
  return Object.entries(element)
    .filter(([key]) => !PLACE.has(key))
    .map(([key, value]) => `${key} ${typeof value === "object" ? JSON.stringify(value) : value}`)
    .join(", ");
}
