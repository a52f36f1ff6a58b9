/** What every tube record holds apart from its model: names, heater, base, pins, limits, sources. */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { type TubeFile, tubeFiles } from "./tubeRecords.ts";

const sources = new Set(
  readFileSync(new URL("../../datasets/sources.csv", import.meta.url), "utf8")
    .split("\n")
    .map((line) => line.split(",")[0]),
);

/** Functions that a pin may have, after "-1" and "-2" (unit, or number of a converter's grid) and " and " are taken apart. */
const FUNCTIONS = new Set(
  "anode beam-plates cathode diode-plate filament grid heater jumper none plate screen shell shield sleeve suppressor target triode-cathode triode-grid triode-plate".split(
    " ",
  ),
);
const functionsOf = (tube: TubeFile): string[] =>
  Object.values(tube.base?.pins ?? {}).flatMap((text) => text.split(/ and | or /).map((word) => word.replace(/ (centre )?tap$/, "")));
const rooted = (word: string): string => word.replace(/-\d$/, "");
/** Every function that a tube of a class brings out; "grid" stands for any numbered one in a converter. */
const NEEDED: Readonly<Record<string, readonly string[]>> = {
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
/** Pins that a socket has. from-memory: the count is in its name, but for octal (8) and noval (9). */
const PINS: Readonly<Record<string, number>> = {
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

/** Bases on which the plate has two pins. */
const DOUBLED_PLATE: ReadonlySet<string> = new Set(["6BG", "7BA"]);

const wired = tubeFiles.filter(({ base }) => base?.pins !== undefined);

describe("the collection", () => {
  it("holds at least 85 types, nearly all with their pins", () => {
    expect(tubeFiles.length).toBeGreaterThanOrEqual(85);
    expect(wired.length / tubeFiles.length).toBeGreaterThan(0.95);
  });

  it("has every name in one record only, whatever its case", () => {
    const names = tubeFiles.flatMap((tube) => tube.names.map((name) => name.toUpperCase()));
    expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([]);
  });

  it.each(tubeFiles)("$id: sources are in the list, the file goes by the first name", (tube) => {
    const named = [tube.base, tube.heater, tube.limits, ...tube.units, ...tube.typical].flatMap((part) =>
      part?.source === undefined ? [] : [part.source],
    );
    expect(named.filter((source) => !sources.has(source))).toEqual([]);
    expect(tube.names[0]?.toLowerCase().replace("/", "-")).toBe(tube.id);
  });

  it.each(tubeFiles.filter(({ units }) => units[0]?.kind === "none"))("$id: says that it is not simulated", (tube) => {
    expect(tube.note).toMatch(/limits only|not simulated/i);
  });
});

describe("bases", () => {
  it.each(wired)("$id: pins exist on the socket, and none outside it but caps", (tube) => {
    const count = PINS[tube.base?.socket ?? ""];
    expect(count).toBeDefined();
    for (const pin of Object.keys(tube.base?.pins ?? {})) if (!pin.startsWith("cap")) expect(Number(pin)).toBeGreaterThanOrEqual(1);
    for (const pin of Object.keys(tube.base?.pins ?? {})) if (!pin.startsWith("cap")) expect(Number(pin)).toBeLessThanOrEqual(count ?? 0);
  });

  /**
   * from-memory (EIA designations): the number before the letters counts the connections that are in use, give or take a shell, a
   * doubled lead or a cap; on a noval base it is always 9.
   */
  it.each(wired)("$id: base code $base.code goes with the number of pins", (tube) => {
    const listed = Object.values(tube.base?.pins ?? {}).filter((word) => !/^(shell|none|sleeve|shield)/.test(word)).length;
    const said = Number(/^\d+/.exec(tube.base?.code ?? "")?.[0]);
    if (tube.base?.socket === "noval 9-pin") expect(said).toBe(9);
    else expect(Math.abs(listed - said)).toBeLessThanOrEqual(/^miniature/.test(tube.base?.socket ?? "") ? 1 : 2);
  });

  it("gives tubes of one base code the same pins, where their classes agree", () => {
    const seen = new Map<string, [string, string]>();
    for (const tube of wired) {
      const key = `${tube.base?.code} ${tube.class}`;
      const pins = JSON.stringify(
        Object.fromEntries(
          Object.entries(tube.base?.pins ?? {})
            .map(([pin, word]) => [pin, word.replace(/^(shell|shield)( or none)?$|^none$/, "-")])
            .filter(([, word]) => word !== "-"),
        ),
      );
      const earlier = seen.get(key);
      if (earlier && earlier[1] !== pins) expect(`${tube.id} ${pins}`).toBe(`${earlier[0]} ${earlier[1]}`);
      seen.set(key, [tube.id, pins]);
    }
    expect(seen.size).toBeGreaterThan(40);
  });

  it.each(wired)("$id: pins have functions of the vocabulary, and every electrode of its class", (tube) => {
    const functions = functionsOf(tube);
    expect(functions.filter((word) => !FUNCTIONS.has(rooted(word)))).toEqual([]);
    const present = new Set([...functions, ...functions.map(rooted)]);
    const twin = tube.units[0]?.count === 2;
    const needed = (NEEDED[tube.class] ?? ["nothing is known of this class"]).flatMap((word) =>
      twin && (word === "plate" || (word === "grid" && tube.class !== "rectifier")) ? [`${word}-1`, `${word}-2`] : [word],
    );
    const unitless = needed.filter((word) => word !== "suppressor" || !/power/.test(tube.class));
    expect(unitless.filter((word) => !present.has(word))).toEqual([]);
    for (const electrode of ["plate", "plate-1", "plate-2", "target", "diode-plate-1", "diode-plate-2"])
      expect(functions.filter((word) => word === electrode).length, electrode).toBeLessThanOrEqual(
        DOUBLED_PLATE.has(tube.base?.code ?? "") ? 2 : 1,
      );
  });

  it.each(wired)("$id: heater pins and cathode as its heating asks", ({ base, heater, ...tube }) => {
    const functions = functionsOf({ base, heater, ...tube } as TubeFile);
    const count = (word: string) => functions.filter((each) => each === word).length;
    if (heater.heating === "none") return expect(count("heater") + count("filament")).toBe(0);
    expect(count(heater.heating === "direct" ? "filament" : "heater")).toBeGreaterThanOrEqual(2);
    expect(count(heater.heating === "direct" ? "heater" : "filament")).toBe(0);
    expect(functions.some((word) => rooted(word) === "cathode")).toBe(heater.heating === "indirect");
  });
});

describe("heaters and limits", () => {
  it.each(tubeFiles)("$id: heater figures that a tube can have", ({ heater }) => {
    if (heater.heating === "none") return expect([heater.volts, heater.amps]).toEqual([0, 0]);
    expect(heater.volts).toBeGreaterThanOrEqual(1.2);
    expect(heater.volts * heater.amps).toBeLessThan(75);
    expect(heater.volts * heater.amps).toBeGreaterThan(0.06);
  });

  // Many points sit at exactly 100 % of a limit; half of the last digit printed is allowed for. ICAS points stand beside CCS limits.
  const points = tubeFiles.flatMap((tube) =>
    tube.typical.flatMap((point, i) =>
      /ICAS/.test(point.service) || (point.unit ?? 1) > 1 ? [] : [{ name: `${tube.id}, point ${i + 1}`, tube, point }],
    ),
  );
  it.each(points)("$name: typical operation lies within the limits", ({ tube, point }) => {
    const limit = (name: string) => Number(tube.limits[name] ?? Number.POSITIVE_INFINITY);
    const classC = /class C/.test(point.service);
    expect(point.plateVolts ?? 0).toBeLessThanOrEqual(limit("plateVolts"));
    expect(point.screenVolts ?? 0).toBeLessThanOrEqual(limit("screenVolts"));
    if (!classC && !/for a moment/.test(point.service))
      expect((point.plateVolts ?? 0) * (point.plateAmps ?? 0)).toBeLessThanOrEqual(1.01 * limit("plateWatts"));
    expect((point.screenVolts ?? 0) * (point.screenAmps ?? 0)).toBeLessThanOrEqual(1.01 * limit("screenWatts"));
    // Transmitting records hold the plate current limit under cathodeAmps.
    expect((point.plateAmps ?? 0) + (classC ? 0 : (point.screenAmps ?? 0))).toBeLessThanOrEqual(1.01 * limit("cathodeAmps"));
  });

  it.each(tubeFiles)("$id: limits are plausible among themselves", ({ limits }) => {
    const of = (name: string) => (limits[name] === undefined ? undefined : Number(limits[name]));
    for (const [name, value] of Object.entries(limits)) if (typeof value === "number") expect(value, name).toBeGreaterThan(0);
    const [plateVolts, plateWatts, screenWatts] = [of("plateVolts"), of("plateWatts"), of("screenWatts")];
    if (plateWatts !== undefined && screenWatts !== undefined) expect(screenWatts).toBeLessThanOrEqual(plateWatts);
    if (plateVolts !== undefined) expect(plateVolts).toBeGreaterThanOrEqual(40);
    const [fixed, cathode] = [of("gridOhmsFixedBias"), of("gridOhmsCathodeBias")];
    if (fixed !== undefined && cathode !== undefined) expect(fixed).toBeLessThanOrEqual(cathode);
  });
});
