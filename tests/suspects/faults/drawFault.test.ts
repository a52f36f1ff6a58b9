import { loadDataset } from "@underchassis/dataset/load";
import { describe, expect, it } from "vitest";
import { CaseMaker } from "../cases/caseMaker.ts";
import { CHASSIS_IDS } from "../chassisFiles.ts";
import { Random } from "../random.ts";
import { applySeededFault } from "./applySeededFault.ts";
import { drawFault, groundOf } from "./drawFault.ts";
import { describeFault, SEEDED_KINDS } from "./seededFault.ts";

const dataset = loadDataset();

describe.each(CHASSIS_IDS)("faults of %s", (id) => {
  const maker = new CaseMaker(id, dataset);
  const network = maker.compiled.get("operating")?.network;
  if (network === undefined) throw new Error("not at work");
  const ground = { ...groundOf(maker.model, network), points: [...maker.points, network.reference] };

  it("change the network, whatever is drawn, and the same again from the same seed", () => {
    const draw = (seed: string) => {
      const random = new Random(seed);
      return SEEDED_KINDS.flatMap((kind) =>
        Array.from({ length: 8 }, () => drawFault(kind, ground, random)).filter((fault) => fault !== undefined),
      );
    };
    const faults = draw("seed");
    expect(faults.length).toBeGreaterThan(80);
    for (const fault of faults) {
      const after = JSON.stringify(applySeededFault(network, fault).elements);
      expect(after === JSON.stringify(network.elements) ? describeFault(fault) : "changed").toBe("changed");
    }
    expect(draw("seed")).toEqual(faults);
    expect(draw("other")).not.toEqual(faults);
  });
});
