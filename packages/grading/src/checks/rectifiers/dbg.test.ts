import { solveSteady } from "@underchassis/calc";
import { it } from "vitest";
import { modelOf } from "../../testing/model.ts";
import { supplyParts } from "../../testing/supply.ts";
it("x", () => {
  const parts = supplyParts({ V1: null }, [
    { name: "D1A", kind: "rectifier", type: "silicon 600 V 1 A", between: ["plate 1", "mid 1"] },
    { name: "D1B", kind: "rectifier", type: "silicon 600 V 1 A", between: ["mid 1", "B+1"] },
    { name: "D2A", kind: "rectifier", type: "silicon 600 V 1 A", between: ["plate 2", "mid 2"] },
    { name: "D2B", kind: "rectifier", type: "silicon 600 V 1 A", between: ["mid 2", "B+1"] }]);
  const m = modelOf({ parts });
  const c=m.compile({ life: "restored", condition: "operating", line: "high" }); for (const r of [1e7,1e8,1e9]) { try { const z=solveSteady({...c.network, elements: c.network.elements.map((e)=>e.kind==="diode"?{...e,reverseOhms:r}:e)},{hertz:60}); console.log(r, z.elements.get("D1A")?.minVolts, z.elements.get("D1B")?.minVolts);} catch(e) { console.log(r, String(e)); } }
});
