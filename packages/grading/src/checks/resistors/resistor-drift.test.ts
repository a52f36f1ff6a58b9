import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { resistorDrift } from "./resistor-drift.ts";

const run = (resistor: object) =>
  resistorDrift.run(
    modelOf({
      parts: [
        { name: "BT", kind: "battery", between: ["B+", "chassis"], marked: "300 V" },
        { name: "R1", kind: "resistor", between: ["B+", "chassis"], marked: "100k 1W 10%", ...resistor },
      ],
    }),
  );

describe("resistor-drift", () => {
  it("finds one 28 % high (reject limit 20 %, R6)", () => {
    const [finding] = run({ measured: { value: "128k" } });
    expect(finding).toMatchObject({ severity: "replace", holds: "service", part: "R1" });
    expect(finding?.figures[1]).toMatchObject({ limit: 0.2, limitKind: "maximum" });
    expect(finding?.figures[1]?.value).toBeCloseTo(0.28, 9);
    expect(finding?.figures[1]?.margin).toBeCloseTo(-0.4, 9);
  });
  it("only watches one between tolerance and limit: 18 %", () =>
    expect(run({ measured: { value: "118k" } })[0]).toMatchObject({ severity: "watch" }));
  it("passes one within tolerance and meter error: 10.5 % with the assumed meter of 1 %", () =>
    expect(run({ measured: { value: "110.5k" } }).map(({ severity }) => severity)).toEqual(["good"]));
  it("is stricter where bias hangs on it: 15 % as a divider", () =>
    expect(run({ role: "divider", measured: { value: "115k" } })[0]).toMatchObject({ severity: "replace" }));
  it("never rejects within the marked tolerance", () =>
    expect(run({ marked: "100k 1W 20%", role: "divider", measured: { value: "118k" } })[0]).toMatchObject({ severity: "good" }));
  it("takes a low one for burnt", () => {
    expect(run({ measured: { value: "70k" } })[0]).toMatchObject({ severity: "replace", holds: "full-line" });
    expect(run({ measured: { value: "70k" } })[0]?.title).toContain("overheated");
  });
  it("finds an open one", () =>
    expect(run({ measured: { condition: "open" } })[0]).toMatchObject({ severity: "replace", title: "R1 is open" }));
  it("finds a new part with a misread band", () =>
    expect(run({ fitted: { marked: "100 kohm 1 W 5%", measured: { value: "10k" } } })[0]).toMatchObject({
      severity: "adjust",
      holds: "full-line",
    }));
  it("does not judge what has been replaced, nor what was read in circuit", () => {
    expect(run({ measured: { value: "200k" }, fitted: "100 kohm 2 W" })).toEqual([]);
    expect(run({ measured: { value: "50k", circuit: "in" } })).toEqual([]);
  });
});
