import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { kitWiring } from "./kit-wiring.ts";

const run = (assembly: "kit" | "home" | "factory", value: string) =>
  kitWiring.run(
    modelOf({
      chassis: { assembly },
      parts: [
        { name: "BT", kind: "battery", between: ["raw", "chassis"], marked: "300 V" },
        { name: "R1", kind: "resistor", between: ["raw", "B+"], marked: "10 kohm 5% 5 W" },
        { name: "R2", kind: "resistor", between: ["B+", "chassis"], marked: "20 kohm 5% 5 W" },
      ],
      readings: [{ at: "B+", quantity: "dc-volts", value }],
    }),
  );

describe("kit-wiring", () => {
  it("asks for a lead-by-lead check where a kit's readings do not fit, naming the parts at the point", () => {
    const [finding] = run("kit", "20 V");
    expect(finding).toMatchObject({ severity: "watch" });
    expect(finding?.action).toContain("R1 and R2");
    expect(run("home", "20 V")[0]?.title).toContain("home-built");
  });
  it("is content where they fit: 200 V", () => expect(run("kit", "200 V")).toEqual([]));
  it("does not apply to factory sets", () => expect(run("factory", "20 V")).toEqual([]));
});
