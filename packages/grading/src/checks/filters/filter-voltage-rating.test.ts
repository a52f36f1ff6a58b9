import { describe, expect, it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { supplyParts } from "../../testing/supply.ts";
import { filterVoltageRating } from "./filter-voltage-rating.ts";

const of = (marked: string, part = "C1") =>
  filterVoltageRating
    .run(modelOf({ parts: supplyParts({ R1: { marked: "1 Mohm 1 W" }, [part]: { marked } }) }))
    .find((finding) => finding.part === part);

describe("filter-voltage-rating", () => {
  it("judges by the no-load crest at the highest line, not by the running voltage", () => {
    // F38: open half winding 313 V at 126 / 120: 329 V; crest 465 V less the few volts that a bleeder of 1 Mohm costs. A 450 V part is over it, running at about 370 V or not.
    const finding = of("20 uF 450 V electrolytic");
    expect(finding).toMatchObject({ severity: "replace", holds: "full-line", condition: "tubes-out", figures: [{ limit: 450 }] });
    expect(finding?.figures[0]?.value ?? 0).toBeGreaterThan(450);
    expect(finding?.figures[0]?.value ?? 0).toBeLessThan(465);
    expect(finding?.order?.[0]?.what).toContain("500 V");
  });

  it("does not take a surge rating for a working one", () => {
    expect(of("20 uF 450 V 525 V surge electrolytic")?.why).toContain("half a minute");
  });

  it("calls 350 V a danger, 500 V little margin, 600 V good", () => {
    expect(of("20 uF 350 V electrolytic")?.severity).toBe("danger");
    expect(of("20 uF 500 V electrolytic")?.severity).toBe("watch");
    expect(of("20 uF 600 V electrolytic")?.severity).toBe("good");
  });

  it("asks for an unknown rating of an original before full line", () => {
    expect(of("20 uF electrolytic")).toMatchObject({ severity: "unmeasured", holds: "full-line" });
  });

  it("does not apply to other capacitors", () => {
    const model = modelOf({
      parts: supplyParts({ C1: null, C2: null }, [
        { name: "C5", kind: "capacitor", marked: "0.01 uF 600 V film", between: ["B+2", "chassis"] },
      ]),
    });
    expect(filterVoltageRating.run(model)).toEqual([]);
  });
});
