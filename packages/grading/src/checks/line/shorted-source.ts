import type { Check, Finding } from "../../model/index.ts";
import { type Short, shortedSources } from "../../simulate/shorts.ts";
import { judgedLives } from "../shared/lives.ts";
import { report } from "../shared/report.ts";

/** A wire straight across the line or a battery, as the chassis stands or as a plan would leave it. */
export const shortedSource: Check = {
  id: "shorted-source",
  area: "line",
  title: "Wiring across the line or a battery",
  question: "Does the wiring short the line or a battery?",
  needs: "wires or cords, and where they were found or fitted",
  sources: ["common-practice"],
  cautions: ["line-wiring-licensed"],
  run(model) {
    const standing = new Set(shortedSources(model, "restored").map(nameOf));
    return judgedLives(model).flatMap((life) =>
      shortedSources(model, life)
        .filter((short) => life === "restored" || !standing.has(nameOf(short)))
        .map((short): Finding => {
          const source = short.source === "line" ? "the line" : short.source;
          const names = short.by.map(({ name }) => name).join(", ");
          return report(this, life, short.by[0], {
            severity: "danger",
            title: `${names} shorts ${source}`,
            found: `${short.points.join(" and ")} joined by ${names}`,
            shouldBe: "joined by nothing but what the source feeds",
            why: "The fuse, the house wiring or the battery takes the whole current, and nothing of the chassis can be computed.",
            action: `Take ${names} off ${short.points[0]} or ${short.points[1]} before the plug or the battery goes in, and look for what it burnt.`,
            holds: "current-limited",
          });
        }),
    );
  },
};

function nameOf({ source, by }: Short): string {
  return JSON.stringify([source, by.map(({ id }) => id)]);
}
