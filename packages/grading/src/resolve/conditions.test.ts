import { describe, expect, it } from "vitest";
import { modelOf } from "../testing/model.ts";
import { referenceDataset } from "../testing/referenceDataset.ts";

type Conditions = NonNullable<Parameters<typeof modelOf>[0]["conditions"]>;
const conditionsOf = (conditions: Conditions) => modelOf({ conditions }).conditions;

describe("conditions", () => {
  it("are four when the job adds none, and only one is without power", () => {
    const all = [...conditionsOf({}).values()];
    expect(all.map(({ id }) => id)).toEqual(["cold", "tubes-out", "standby", "operating"]);
    expect(all.filter(({ powered }) => !powered).map(({ id }) => id)).toEqual(["cold"]);
    expect(all.map(({ tubes }) => tubes)).toEqual(["all", "rectifiers", "all", "all"]);
  });

  it("of the job's own start from operating, or from the one that they are like", () => {
    const conditions = conditionsOf({
      receive: { title: "receiving" },
      cool: { like: "cold", tubes: "none" },
      pulled: { like: "tubes-out" },
    });
    expect(conditions.get("receive")).toMatchObject({ like: "operating", title: "receiving", powered: true, tubes: "all" });
    expect(conditions.get("cool")).toMatchObject({ like: "cold", title: "cool", powered: false, tubes: "none" });
    expect(conditions.get("pulled")).toMatchObject({ tubes: "rectifiers", powered: true });
  });

  it("change the four where the job names them", () => {
    const conditions = conditionsOf({ standby: { switches: { S2: "open" }, lineVolts: "110 V" } });
    expect(conditions.get("standby")).toMatchObject({ like: "standby", switches: { S2: "open" }, lineVolts: 110, title: "standby" });
    expect(conditions.size).toBe(4);
  });

  it("inherit switches, loads and line from the changed one, whichever the file names first", () => {
    const operating = { switches: { S1: "closed", S2: "open" }, loads: { A: "10 mA", B: "5 kohm" }, lineVolts: "115 V" } as const;
    const send = { like: "operating", switches: { S2: "closed" }, loads: { A: "60 mA at 300 V" } } as const;
    for (const conditions of [conditionsOf({ operating, send }), conditionsOf({ send, operating })]) {
      expect(conditions.get("send")).toMatchObject({
        switches: { S1: "closed", S2: "closed" },
        loads: { A: { ohms: 5000 }, B: { ohms: 5000 } },
        lineVolts: 115,
      });
    }
  });

  it("name the tubes that are in", () => {
    expect(conditionsOf({ half: { tubes: ["V1", "V3"] } }).get("half")!.tubes).toEqual(["V1", "V3"]);
  });

  it("with a load or voltage that nobody can read are refused", () => {
    expect(() => conditionsOf({ receive: { loads: { A: "plenty" } } })).toThrow("value-unreadable");
    expect(() => conditionsOf({ receive: { lineVolts: "117 mA" } })).toThrow("value-unreadable");
  });

  it("leave nothing powered with the tubes of a series string out, unless the rectifier is dry", () => {
    const tubesOut = (type: string, isolation: "transformerless" | "transformer") =>
      modelOf(
        { chassis: { isolation }, parts: [{ name: "V1", kind: "rectifier", between: ["line hot", "B+"], type }] },
        referenceDataset(),
      ).conditions.get("tubes-out")?.powered;
    expect(tubesOut("35W4", "transformerless")).toBe(false);
    expect(tubesOut("35W4", "transformer")).toBe(true);
    expect(tubesOut("1N4007", "transformerless")).toBe(true);
  });
});
