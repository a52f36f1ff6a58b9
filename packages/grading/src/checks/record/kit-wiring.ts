import type { Check, Finding } from "../../model/index.ts";
import { joined } from "../shared/phrases.ts";
import { placeOf, stagesAt, standingReadings } from "../shared/readings.ts";
import { report } from "../shared/report.ts";

/** Kits and home-built sets whose readings do not fit: the wiring may never have been right. */
export const kitWiring: Check = {
  id: "kit-wiring",
  area: "record",
  title: "Wiring of a kit or home-built chassis",
  question: "Could a lead have been on the wrong point since the day it was built?",
  needs: "assembly kit or home, and readings",
  sources: ["common-practice", "kit-building-notes"],
  cautions: ["high-voltage-stored-charge"],
  run(model): Finding[] {
    if (model.assembly !== "kit" && model.assembly !== "home") return [];
    const off = standingReadings(model).filter(({ verdict }) => verdict === "far-outside");
    if (off.length === 0) return [];
    const stages = [...new Set(off.flatMap(({ reading }) => stagesAt(model, reading.at)))];
    const touching = [...new Set(off.flatMap(({ reading }) => model.points.get(reading.at) ?? []))].map(
      (id) => model.parts.get(id)?.name ?? id,
    );
    return [
      report(this, "restored", undefined, {
        severity: "watch",
        ...(stages[0] === undefined ? {} : { stage: stages[0].id }),
        title: `${off.length} ${off.length === 1 ? "reading does" : "readings do"} not fit, in a ${model.assembly === "kit" ? "kit" : "home-built"} chassis: suspect the wiring too`,
        found: off.map(({ reading }) => placeOf(model, reading)).join("; "),
        shouldBe: "every lead where the drawing has it",
        why: "In a factory set something has failed since it last worked. A kit may never have worked: joints without solder, values misread, polarities and leads on the next lug account for nearly all faults of kits.",
        action: `Plug out, capacitors discharged. Compare lead by lead with the drawing${stages.length === 0 ? "" : `, first in ${joined(stages.map(({ title }) => title))}`}${touching.length === 0 ? "" : `, starting with ${joined(touching.slice(0, 8))}`}: every joint, every value, tube sockets counted from below. Then cold resistances point to point; the first that differs names the pair of lugs.`,
      }),
    ];
  },
};
