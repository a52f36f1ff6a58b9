/** What every tube record holds apart from its model: names, heater, base, pins, limits, sources. */
import { describe, expect, it } from "vitest";
import { type TubeFile, tubeFiles } from "./tubeRecords.ts";

const functionsOf = (tube: TubeFile): string[] =>
  Object.values(tube.base?.pins ?? {}).flatMap((text) => text.split(/ and | or /).map((word) => word.replace(/ (centre )?tap$/, "")));
const rooted = (word: string): string => word.replace(/-\d$/, "");
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

  it.each(tubeFiles.filter(({ units }) => units[0]?.kind === "none"))("$id: says that it is not simulated", (tube) => {
    expect(tube.note).toMatch(/limits only|not simulated/i);
  });
});

describe("bases", () => {
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

  it.each(wired)("$id: every electrode has one pin, but for plates on bases that double them", (tube) => {
    const functions = functionsOf(tube);
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
