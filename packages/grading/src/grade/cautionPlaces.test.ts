import type { Dataset, JobPart, TubeRecord } from "@underchassis/dataset";
import { describe, expect, it } from "vitest";
import { modelOf, type TestJob } from "../testing/model.ts";
import { referenceDataset } from "../testing/referenceDataset.ts";
import { supplyParts } from "../testing/supply.ts";
import { cautionLines } from "./cautionLines.ts";
import { placeReasons } from "./cautionPlaces.ts";

const reference = referenceDataset();
const model6146 = reference.tubes.get("6146")!;
/** The reference with two types that need a record to stand in a job: what counts here is their names. */
const dataset: Dataset = {
  ...reference,
  tubes: new Map([...reference.tubes, ...["4CX250B", "5UP1"].map((name): [string, TubeRecord] => [name, { ...model6146, names: [name] }])]),
};

const battery = (volts: string): JobPart => ({ name: "BT1", kind: "battery", between: ["B+", "chassis"], marked: volts });
const capacitor = (marked: string, more: Partial<JobPart> = {}): JobPart => ({
  name: "C9",
  kind: "capacitor",
  between: ["B+", "chassis"],
  marked,
  ...more,
});
const job = (year: number | undefined, parts: JobPart[], more: TestJob = {}): TestJob => ({
  parts: [battery("250 V"), ...parts],
  ...more,
  chassis: { ...(year === undefined ? {} : { era: year }), ...more.chassis },
});
const tube = (type: string): JobPart => ({ name: "V9", kind: "tube", type, pins: { plate: "B+", grid: "g", cathode: "chassis" } });
const rectifier = (type: string): JobPart => ({ name: "V9", kind: "rectifier", type, between: ["B+", "out"] });
const cord = (marked: string): JobPart => ({
  name: "W9",
  kind: "cord",
  marked,
  pins: { "hot-in": "line hot", "hot-out": "a", "neutral-in": "line neutral", "neutral-out": "b" },
});
const stage = (template: string): TestJob => ({ stages: [{ id: "s", template }] });
const resistor = (marked: string, more: Partial<JobPart> = {}): JobPart => ({
  name: "R9",
  kind: "resistor",
  between: ["B+", "chassis"],
  marked,
  ...more,
});

/** For each place of each caution: jobs in which it must show, with the reason that it gives, and jobs in which it must not. */
const LINKS: Readonly<Record<string, readonly { shows: readonly [TestJob, string][]; not: readonly TestJob[] }[]>> = {
  asbestos: [
    { shows: [[job(1938, [cord("2-wire resistance cord")]), "W9"]], not: [job(1975, [cord("2-wire resistance cord")])] },
    {
      shows: [[job(1939, [cord("2-wire")], { chassis: { isolation: "transformerless" } }), "W9"]],
      not: [job(1939, [cord("2-wire")]), job(1950, [cord("2-wire")], { chassis: { isolation: "transformerless" } })],
    },
    { shows: [[job(1960, [resistor("10k 5W", { name: "R9 on asbestos" })]), "R9 on asbestos"]], not: [job(1960, [resistor("10k 5W")])] },
    {
      shows: [[job(1939, [resistor("200 ohm 10W", { name: "ballast R9" })]), "ballast R9"]],
      not: [job(1970, [resistor("200 ohm 10W", { name: "ballast R9" })]), job(1939, [capacitor("0.1 uF 400 V", { name: "ballast C9" })])],
    },
    {
      shows: [
        [job(1940, [resistor("1k")], { chassis: { description: "Behind the lamp lies an asbestos sheet." } }), "described as asbestos"],
      ],
      not: [job(1940, [resistor("1k")], { chassis: { description: "Behind the lamp lies a sheet." } })],
    },
  ],
  "battery-residue": [{ shows: [[job(1950, []), "BT1"]], not: [{ parts: supplyParts() }] }],
  beryllia: [
    { shows: [[job(1965, [tube("4CX250B")]), "V9"]], not: [job(1965, [tube("6146")])] },
    { shows: [[job(1965, [resistor("50 ohm 5W", { name: "R9, beryllia" })]), "R9, beryllia"]], not: [job(1965, [resistor("50 ohm 5W")])] },
  ],
  "bulb-implosion": [
    { shows: [[stage("oscilloscope-high-voltage"), "s"]], not: [stage("tube-tester-supply")] },
    {
      shows: [[job(1955, [], { title: "Service oscilloscope" }), "described as oscilloscope"]],
      not: [job(1955, [], { title: "Service oscillator" })],
    },
    { shows: [[job(1955, [tube("5UP1")]), "V9"]], not: [job(1955, [tube("6146")])] },
  ],
  "electrolytic-burst": [
    {
      shows: [[{ parts: supplyParts() }, "C1"]],
      not: [job(1950, [capacitor("0.1 uF 400 V paper")]), job(1950, [capacitor("25 uF 25 V", { role: "cathodeBypass" })])],
    },
  ],
  "hot-pitch": [
    {
      shows: [[job(1935, [capacitor("1 mfd 400V paper", { name: "pitch block C9" })]), "pitch block C9"]],
      not: [job(1935, [capacitor("1 mfd 400V paper")])],
    },
  ],
  "keyed-circuit-live": [
    { shows: [[stage("keying-cathode"), "s"]], not: [stage("crystal-oscillator")] },
    {
      shows: [[job(1950, [], { title: "Transmitter with cathode keying" }), "described as keying"]],
      not: [job(1950, [], { title: "Transmitter" })],
    },
    {
      shows: [[job(1950, [{ name: "key S9", kind: "switch", between: ["B+", "x"], marked: "1 A 125 V" }]), "key S9"]],
      not: [job(1950, [resistor("1k", { name: "key R9" })])],
    },
  ],
  "lead-solder": [{ shows: [[job(1950, []), "a chassis of 1950"]], not: [job(2015, [])] }],
  "mercury-vapour": [
    {
      shows: [
        [job(1950, [rectifier("866")]), "V9"],
        [job(1950, [rectifier("866A")]), "V9"],
      ],
      not: [job(1950, [rectifier("1N4007")])],
    },
    {
      shows: [[job(1950, [{ name: "mercury S9", kind: "switch", between: ["B+", "x"], marked: "1 A 125 V" }]), "mercury S9"]],
      not: [job(1950, [{ name: "S9", kind: "switch", between: ["B+", "x"], marked: "1 A 125 V" }])],
    },
    {
      shows: [[job(1950, [], { title: "Supply with mercury-vapour rectifiers" }), "described as mercury-vapour"]],
      not: [job(1950, [], { title: "Supply with rectifiers" })],
    },
  ],
  "meter-at-high-potential": [
    { shows: [[stage("metering-shunt-multiplier"), "s"]], not: [stage("crystal-oscillator")] },
    {
      shows: [[job(1950, [resistor("1 ohm", { name: "meter shunt" })]), "meter shunt"]],
      not: [job(1950, [resistor("1 ohm", { name: "shunt" })])],
    },
  ],
  "pcb-oil": [
    {
      shows: [
        [job(1955, [capacitor("4 uF 600 V oil")]), "C9"],
        [job(undefined, [capacitor("4 uF 600 V oil")], { chassis: {} }), "C9"],
      ],
      not: [job(1985, [capacitor("4 uF 600 V oil")]), job(1955, [capacitor("4 uF 600 V film")])],
    },
    { shows: [[job(1955, [capacitor("2 uF 2500 V paper")]), "C9"]], not: [job(1955, [capacitor("0.01 uF 1600 V paper")])] },
    {
      shows: [[job(1955, [capacitor("0.1 uF 600 V", { name: "bathtub C9" })]), "bathtub C9"]],
      not: [job(1990, [capacitor("0.1 uF 600 V", { name: "bathtub C9" })]), job(1955, [resistor("1k", { name: "oil R9" })])],
    },
    {
      shows: [
        [job(1955, [{ name: "lamp ballast L9", kind: "inductor", between: ["B+", "x"], marked: "1 H 200 mA 30 ohm" }]), "lamp ballast L9"],
      ],
      not: [job(1985, [{ name: "lamp ballast L9", kind: "inductor", between: ["B+", "x"], marked: "1 H 200 mA 30 ohm" }])],
    },
    {
      shows: [[job(1955, [], { chassis: { description: "The plate transformer is oil-filled." } }), "described as oil-filled"]],
      not: [job(1985, [], { chassis: { description: "The plate transformer is oil-filled." } })],
    },
  ],
  "ptfe-fumes": [
    { shows: [[job(1965, [resistor("1k", { name: "R9, PTFE leads" })]), "R9, PTFE leads"]], not: [job(1965, [resistor("1k")])] },
    { shows: [[job(1965, [], { chassis: { description: "Wired in PTFE." } }), "described as ptfe"]], not: [job(1965, [])] },
  ],
  "radium-dials": [
    { shows: [[stage("vtvm-bridge"), "s"]], not: [{ ...stage("vtvm-bridge"), chassis: { era: 1972 } }, stage("cathode-follower")] },
    { shows: [[job(1944, [resistor("1k", { name: "R9, radium tip" })]), "R9, radium tip"]], not: [job(1944, [resistor("1k")])] },
    {
      shows: [[job(1944, [], { title: "Aircraft receiver" }), "described as aircraft"]],
      not: [job(1972, [], { title: "Aircraft receiver" }), job(1944, [], { title: "Receiver" })],
    },
  ],
  "rf-burns": [
    { shows: [[stage("crystal-oscillator"), "s"]], not: [stage("if-stage")] },
    { shows: [[job(1950, [], { title: "Small transmitter" }), "described as transmitter"]], not: [job(1950, [], { title: "Receiver" })] },
  ],
  "selenium-fumes": [
    { shows: [[job(1955, [rectifier("selenium 130 V 100 mA")]), "V9"]], not: [job(1955, [rectifier("1N4007")])] },
    {
      shows: [[job(1955, [{ ...rectifier("1N4007"), name: "old selenium place" }]), "old selenium place"]],
      not: [job(1955, [resistor("1k", { name: "selenium R9" })])],
    },
  ],
  "series-capacitors-floating-cans": [
    {
      shows: [[job(1955, [resistor("220k 2W", { role: "balancing" })]), "R9"]],
      not: [job(1955, [resistor("220k 2W", { role: "bleeder" })])],
    },
    { shows: [[stage("series-filter-capacitors"), "s"]], not: [stage("decoupling-section")] },
  ],
  "standby-live": [
    {
      shows: [[job(1960, [{ name: "S9", kind: "switch", role: "standbySwitch", between: ["B+", "x"], marked: "3 A 250 V" }]), "S9"]],
      not: [job(1960, [{ name: "S9", kind: "switch", role: "lineSwitch", between: ["B+", "x"], marked: "3 A 250 V" }])],
    },
  ],
  "thermistor-hot": [
    {
      shows: [[job(1960, [{ name: "RT9", kind: "thermistor", between: ["B+", "x"], marked: "47 ohm 2 A" }]), "RT9"]],
      not: [job(1960, [resistor("47 ohm 5 W")])],
    },
  ],
  "transformerless-live-chassis": [
    { shows: [[job(1950, [], { chassis: { isolation: "transformerless" } }), "transformerless chassis"]], not: [job(1950, [])] },
  ],
  "x-rays": [
    {
      shows: [[{ parts: [battery("15 kV"), resistor("100 Mohm 5 W")] }, "B+: 15 kV"]],
      not: [{ parts: [battery("8 kV"), resistor("100 Mohm 5 W")] }],
    },
  ],
};

const CASES = Object.entries(LINKS).flatMap(([id, places]) => places.map((place, index) => ({ id, index, ...place })));

const reasonsOf = (id: string, index: number, written: TestJob): string[] =>
  placeReasons(dataset.cautions.get(id)!.appliesTo![index]!, modelOf(written, dataset));

describe("every place of every caution", () => {
  it("has a job that shows it and one that does not", () => {
    const places = [...reference.cautions.values()].flatMap(({ id, appliesTo }) => (appliesTo ?? []).map((_, index) => `${id} ${index}`));
    const tried = CASES.filter(({ shows, not }) => shows.length > 0 && not.length > 0).map(({ id, index }) => `${id} ${index}`);
    expect(tried.sort()).toEqual(places.sort());
  });

  it.each(CASES)("$id $index shows where it belongs, with the reason", ({ id, index, shows }) => {
    for (const [written, reason] of shows) {
      const title = written.stages === undefined ? reason : (dataset.stages.get(written.stages[0]!.template)?.title ?? "");
      expect(reasonsOf(id, index, written)).toContain(title);
      const line = cautionLines(modelOf(written, dataset), []).find((caution) => caution.id === id);
      expect(line?.because).toContain(title);
    }
  });

  it.each(CASES)("$id $index stays away elsewhere", ({ id, index, not }) => {
    for (const written of not) expect(reasonsOf(id, index, written)).toEqual([]);
  });
});

describe("a place", () => {
  it("counts what was found, though it has been replaced since", () => {
    const replaced = job(1955, [capacitor("4 uF 600 V oil", { fitted: { marked: "4.7 uF 630 V film" } })]);
    expect(reasonsOf("pcb-oil", 0, replaced)).toEqual(["C9"]);
  });

  it("counts a planned voltage", () => {
    const planned: TestJob = { parts: [{ ...battery("8 kV"), fitted: { marked: "16 kV", planned: true } }, resistor("100 Mohm 5 W")] };
    expect(reasonsOf("x-rays", 0, planned)).toEqual(["B+: 16 kV"]);
  });

  it("takes words whole and in any case", () => {
    expect(reasonsOf("pcb-oil", 2, job(1955, [capacitor("0.1 uF 600 V", { name: "Oil C9" })]))).toEqual(["Oil C9"]);
    expect(reasonsOf("pcb-oil", 2, job(1955, [capacitor("0.1 uF 600 V", { name: "Coil C9" })]))).toEqual([]);
  });
});
