import type { JobPart } from "@underchassis/dataset";
import { describe, expect, it } from "vitest";
import { LIVES, type Part } from "../model/index.ts";
import { modelOf } from "../testing/model.ts";
import { datasetWith, templateOf } from "../testing/stageTemplate.ts";

/** A 470 ohm resistor between "a" and "b" unless the test says otherwise. */
function part(rest: Partial<JobPart>): Part {
  const written: JobPart = { name: "X1", kind: "resistor", between: ["a", "b"], ...rest };
  return modelOf({ parts: [written], meters: { bridge: { accuracy: "1 %" } } }).parts.get("X1")!;
}
const resistor = (rest: Partial<JobPart> = {}) => part({ marked: "470 ohm 5 % 1 W", ...rest });
const capacitor = (rest: Partial<JobPart> = {}) => part({ kind: "capacitor", marked: "20 uF 450 V", ...rest });

const values = ({ lives }: Part) => LIVES.map((life) => lives[life].main?.value);
const presence = ({ lives }: Part) => LIVES.map((life) => lives[life].present);
const places = ({ lives }: Part) => LIVES.map((life) => `${lives[life].pins.a}-${lives[life].pins.b}`);

describe("a part that nobody touched", () => {
  it("is what is marked on it, in all its lives", () => {
    const r = resistor();
    expect(values(r)).toEqual([470, 470, 470, 470]);
    expect(presence(r)).toEqual([true, true, true, true]);
    expect(r.lives.designed.main).toEqual({ value: 470, tolerance: { minus: 0.05, plus: 0.05 }, from: "marking" });
    expect(r.change).toBe("none");
    expect(r.lives.found.ratedWatts).toBe(1);
  });

  it("takes a tolerance written beside the marking", () => {
    expect(resistor({ marked: "470 ohm", tolerance: "10 %" }).lives.designed.main?.tolerance).toEqual({ minus: 0.1, plus: 0.1 });
  });
});

describe("what was found", () => {
  it("in its place is found and left, and is not what the maker meant", () => {
    const r = resistor({ foundMarked: "330 ohm" });
    expect(values(r)).toEqual([470, 330, 330, 330]);
    expect(r.foundInPlace).toBe("330 ohm");
  });

  it("on other points stays there until it is put right", () => {
    expect(places(resistor({ foundBetween: ["a", "c"] }))).toEqual(["a-b", "a-c", "a-c", "a-c"]);
    expect(places(resistor({ foundBetween: ["a", "c"], fitted: "470 ohm" }))).toEqual(["a-b", "a-c", "a-b", "a-b"]);
  });
});

describe("what was measured", () => {
  it("out of circuit replaces the marking from then on, with the meter's error", () => {
    const r = resistor({ measured: { value: "560 ohm", meter: "bridge" } });
    expect(values(r)).toEqual([470, 560, 560, 560]);
    expect(r.lives.found.main).toEqual({ value: 560, tolerance: { minus: 0.01, plus: 0.01 }, from: "measurement" });
  });

  it("in circuit changes nothing here: parallel paths may have pulled it down", () => {
    const r = resistor({ measured: { value: "390 ohm", circuit: "in" } });
    expect(values(r)).toEqual([470, 470, 470, 470]);
    expect(r.measured).toMatchObject({ value: 390, circuit: "in", asWritten: "390 ohm in circuit" });
  });

  it.each(["open", "dead"] as const)("as %s takes it out of the circuit and leaves a gap", (condition) => {
    const r = resistor({ measured: { condition } });
    expect(presence(r)).toEqual([true, false, false, false]);
    expect(r.lives.found.open).toBe(true);
    expect(presence(resistor({ measured: { condition }, fitted: "470 ohm" }))).toEqual([true, false, true, true]);
  });

  it("as nothing, a capacity or an emission of zero, is open too", () => {
    expect(presence(capacitor({ measured: { value: "0 uF" } }))).toEqual([true, false, false, false]);
    expect(presence(part({ kind: "rectifier", type: "5Y3GT", measured: { emission: "0 %" } }))).toEqual([true, false, false, false]);
    expect(values(resistor({ measured: { value: "0 ohm" } }))).toEqual([470, 0, 0, 0]);
  });

  it("as shorted leaves half an ohm", () => {
    expect(capacitor({ measured: { condition: "shorted" } }).lives.found.leak?.value).toBe(0.5);
    expect(capacitor({ measured: { condition: "shorted" } }).lives.designed.leak).toBeUndefined();
  });

  // R = V / I: 450 V at 1.5 mA is 300 kohm, 300 V at 1.5 mA is 200 kohm.
  it.each([
    [{ leakage: "1.5 mA" }, 300e3],
    [{ leakage: "1.5 mA", atVolts: "300 V" }, 200e3],
    [{ leakage: "2 Mohm" }, 2e6],
    [{ leakage: "0 mA" }, undefined],
  ])("as leakage %o is a resistance", (measured, ohms) => {
    expect(capacitor({ measured }).lives.found.leak?.value).toBe(ohms);
  });

  it("as ESR, wire resistance and emission stands beside the value", () => {
    expect(capacitor({ measured: { esr: "12 ohm" } }).lives.found.esr?.value).toBe(12);
    expect(part({ kind: "inductor", marked: "8 H 200 ohm", measured: { dcr: "230 ohm" } }).lives.found.dcr).toMatchObject({
      value: 230,
      from: "measurement",
    });
    expect(part({ kind: "rectifier", type: "5Y3GT", measured: { emission: "80 %" } }).lives.found.emission).toBeCloseTo(0.8, 12);
  });
});

describe("what was fitted", () => {
  it("replaces the part from then on, in the place where it belongs", () => {
    const r = resistor({ measured: { value: "700 ohm" }, fitted: "470 ohm 2 W" });
    expect(values(r)).toEqual([470, 700, 470, 470]);
    expect(r.change).toBe("replaced");
    expect(r.lives.restored).toMatchObject({ ratedWatts: 2, main: { from: "fitted" } });
  });

  it("counts as it was measured, when it was", () => {
    const r = resistor({ fitted: { marked: "470 ohm", measured: { value: "473 ohm" }, why: "burnt" } });
    expect(values(r)).toEqual([470, 470, 473, 473]);
    expect(r).toMatchObject({ changeWhy: "burnt", fittedMeasured: { value: 473 } });
  });

  it("but only planned stands in the planned life alone", () => {
    const r = resistor({ fitted: { marked: "1 kohm", planned: true } });
    expect(values(r)).toEqual([470, 470, 470, 1000]);
    expect(r.change).toBe("planned");
  });

  it("elsewhere without a new part is the old one moved, measured values and all", () => {
    const r = resistor({ measured: { value: "480 ohm" }, fitted: { between: ["c", "d"] } });
    expect(places(r)).toEqual(["a-b", "a-b", "c-d", "c-d"]);
    expect(values(r)).toEqual([470, 480, 480, 480]);
    expect(r.change).toBe("moved");
  });

  it("elsewhere with a new part is replaced there", () => {
    const r = resistor({ fitted: { marked: "1 kohm", between: ["c", "d"] } });
    expect(places(r)).toEqual(["a-b", "a-b", "c-d", "c-d"]);
    expect(values(r)).toEqual([470, 470, 1000, 1000]);
    expect(r.change).toBe("replaced");
  });

  it("where there was nothing is added", () => {
    const r = part({ fitted: "100 kohm 2 W" });
    expect(presence(r)).toEqual([false, false, true, true]);
    expect(r.change).toBe("added");
    expect(r.asWritten.marked).toBeUndefined();
  });

  it("as another rectifier type changes the device, not the place", () => {
    const r = part({ kind: "rectifier", type: "5Y3GT", foundType: "1N4007", fitted: { type: "5Y3GT" } });
    expect(LIVES.map((life) => r.lives[life].device?.kind)).toEqual(["vacuum-diode", "silicon", "vacuum-diode", "vacuum-diode"]);
    expect(r.foundInPlace).toBe("1N4007");
  });
});

describe("a transformer that was replaced", () => {
  const windings = {
    primary: { between: ["p1", "p2"], marked: "117 V", measured: "5 ohm" },
    hv: { between: ["h1", "ct", "h2"], marked: "300-0-300 V 80 mA", measured: "300 ohm" },
  } as unknown as NonNullable<JobPart["windings"]>;
  const transformer = (fitted: JobPart["fitted"]) => {
    const written = { name: "T1", kind: "transformer", windings, ...(fitted === undefined ? {} : { fitted }) } as JobPart;
    return modelOf({ parts: [written] }).parts.get("T1")!;
  };
  const hv = (t: Part) =>
    LIVES.map((life) => t.lives[life].windings!.find(({ id }) => id === "hv")).map((winding) => [winding?.ratedVolts, winding?.ohms]);

  it("has the new one's windings from then on, and the old ones where nothing is said", () => {
    const t = transformer({ windings: { hv: { marked: "350-0-350 V 100 mA", measured: "240 ohm" } } });
    expect(hv(t)).toEqual([
      [300, 300],
      [300, 300],
      [350, 240],
      [350, 240],
    ]);
    expect(t.lives.restored.windings!.find(({ id }) => id === "primary")).toMatchObject({ ratedVolts: 117, ohms: 5 });
    expect(t.change).toBe("replaced");
  });

  it("does not keep the old wire resistance of a winding that is marked anew", () => {
    const t = transformer({ windings: { hv: { marked: "350-0-350 V 100 mA" } } });
    // HV_WINDING_SHARE of 700 V over 100 mA (from-memory).
    expect(t.lives.restored.windings!.find(({ id }) => id === "hv")).toMatchObject({ ohms: 315, ohmsFrom: "default" });
  });

  it("drops a winding that the new one lacks", () => {
    expect(transformer({ windings: { hv: { absent: true } } }).lives.restored.windings!.map(({ id }) => id)).toEqual(["primary"]);
  });
});

describe("what was taken out", () => {
  it("is gone from the restored chassis, and was there before", () => {
    const r = resistor({ removed: true });
    expect(presence(r)).toEqual([true, true, false, false]);
    expect(r.change).toBe("removed");
  });
});

describe("a part of a stage", () => {
  const template = templateOf({
    id: "feed",
    parts: [
      { role: "feed", title: "feed", kind: "resistor", between: ["supply", "return"], typical: "1 kohm" },
      { role: "extra", title: "extra", kind: "resistor", between: ["supply", "return"], typical: "10 kohm", optional: true },
    ],
  });
  const stagePart = (
    role: "feed" | "extra",
    state: NonNullable<NonNullable<Parameters<typeof modelOf>[0]["stages"]>[number]["parts"]>[string],
  ) => modelOf({ stages: [{ id: "s", template: "feed", parts: { [role]: state } }] }, datasetWith(template)).parts.get(`s.${role}`)!;

  it("that is optional and only fitted was added; one that the stage cannot do without was there, as typical", () => {
    expect(presence(stagePart("extra", { fitted: "22 kohm" }))).toEqual([false, false, true, true]);
    const feed = stagePart("feed", { fitted: "1.2 kohm" });
    expect(values(feed)).toEqual([1000, 1000, 1200, 1200]);
    expect(feed.change).toBe("replaced");
  });

  it("that is optional and marked was there", () => {
    expect(presence(stagePart("extra", { marked: "12 kohm", fitted: "10 kohm" }))).toEqual([true, true, true, true]);
  });
});

it("a part of which nothing is known is a problem of the job", () => {
  expect(() => part({})).toThrow("value-missing: nothing says what X1 (resistor) is");
});

describe("what contradicts itself or cannot be", () => {
  it("is a part both taken out and fitted", () => {
    expect(() => resistor({ removed: true, fitted: "470 ohm" })).toThrow("fitted-and-removed: X1 is both taken out and fitted");
  });

  it.each(["-10 %", "900 %", -0.1, 201])("is an emission of %s", (emission) => {
    expect(() => part({ kind: "tube", type: "6V6GT", measured: { emission }, pins: { plate: "a", cathode: "b", grid: "b" } })).toThrow(
      "value-out-of-range: emission is",
    );
  });

  // common-practice: testers show strong new tubes somewhat above 100 %.
  it.each([
    ["80 %", 0.8],
    [120, 1.2],
    [0.9, 0.9],
  ])("is not an emission of %s", (emission, share) => {
    const tube = part({ kind: "tube", type: "6V6GT", measured: { emission }, pins: { plate: "a", cathode: "b", grid: "b" } });
    expect(tube.measured?.emission).toBeCloseTo(share, 12);
  });
});

describe("a number without unit on a filter capacitor", () => {
  // common-practice: electrolytics are marked in microfarad, and nothing else is.
  it.each(["reservoir", "filterCapacitor", "outputCapacitor", "cathodeBypass"])("is microfarads: %s", (role) => {
    const filter = capacitor({ role, marked: "20", measured: { value: "17" }, foundMarked: "16" });
    expect(filter.lives.designed.main?.value).toBeCloseTo(20e-6, 15);
    expect(filter.measured?.value).toBeCloseTo(17e-6, 15);
  });

  it("measured on an electrolytic by its marking, or on what was fitted, is microfarads too", () => {
    const filter = capacitor({ measured: { value: "17" }, fitted: { marked: "22 uF 450 V", measured: { value: 21.5 } } });
    expect([filter.measured?.value, filter.fittedMeasured?.value]).toEqual([17e-6, 21.5e-6]);
  });

  it("is picofarads on any other capacitor", () => {
    expect(capacitor({ marked: "20 pF mica", measured: { value: "21" } }).measured?.value).toBeCloseTo(21e-12, 20);
  });
});
