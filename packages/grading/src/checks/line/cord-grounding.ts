import type { Check, Finding, Life, Part } from "../../model/index.ts";
import { allIn, livesTouching, reach } from "../shared/layout.ts";
import { lineDuty, lineSide } from "../shared/lineSide.ts";
import { good, report } from "../shared/report.ts";

/** common-practice: rubber and cloth cords older than this are changed unless they bend without cracking. */
const OLD_CORD_BEFORE = 1965;

/** Whether touchable metal is connected to earth through the cord. */
export const cordGrounding: Check = {
  id: "cord-grounding",
  area: "line",
  title: "Line cord and grounding",
  question: "Is the chassis of a set with a power transformer grounded through its cord?",
  needs: "the cord as a part (2-wire or 3-wire) and where its conductors go",
  sources: ["common-practice", "iec-60335-1"],
  cautions: ["line-wiring-licensed", "high-voltage-stored-charge"],
  run(model) {
    if (model.isolation === "transformerless") return [];
    return livesTouching(model, "cord", "capacitor").flatMap((life): Finding[] => {
      const side = lineSide(model, life);
      if (!side.known) return [];
      const cords = allIn(model, life, "cord");
      if (cords.length === 0) {
        return [
          report(cordGrounding, life, undefined, {
            severity: "unmeasured",
            title: "The line cord is not described",
            found: "no cord among the parts",
            shouldBe: "a three-wire cord with its earth conductor on the chassis",
            why: "Whether the metal that hands touch is grounded cannot be judged.",
            action: "Enter the cord as a part (2-wire or 3-wire, with its six or four ends).",
            cautions: [],
            holds: "service",
          }),
        ];
      }
      return cords.flatMap(({ part, state }): Finding[] => {
        const text = textIn(part, life);
        const old = part.change === "none" && (model.era ?? OLD_CORD_BEFORE) < OLD_CORD_BEFORE ? [oldCord(life, part, model.era)] : [];
        if (text === undefined) {
          return [
            report(cordGrounding, life, part, {
              severity: "unmeasured",
              title: `Nothing says whether ${part.name} has an earth conductor`,
              found: "a cord without a word on its conductors",
              shouldBe: "a three-wire cord with its earth conductor on the chassis",
              why: "Whether the metal that hands touch is grounded cannot be judged.",
              action: "Look at the plug, and measure from its earth pin to the chassis: below 0.1 ohm plus the cord.",
              holds: "service",
            }),
          ];
        }
        if (state.earthed === true) {
          const end = state.pins["earth-out"];
          const bonded = end !== undefined && [...reach(model, life, end, () => false).keys()].includes(model.reference);
          if (bonded)
            return [
              ...old,
              good(cordGrounding, life, part, {
                title: "The chassis is grounded through the cord",
                found: text,
                shouldBe: "a three-wire cord, earth on the chassis",
                why: "A fault from line to metal blows the fuse instead of waiting for a hand.",
              }),
            ];
          return [
            ...old,
            report(cordGrounding, life, part, {
              severity: "replace",
              title: `The earth conductor of ${part.name} does not reach the chassis`,
              found: end === undefined ? "a three-wire cord whose earth conductor ends nowhere" : `earth conductor on ${end}`,
              shouldBe: `earth conductor on ${model.reference}`,
              why: "An earth that is not bonded protects nobody.",
              action: "Bond it to the chassis with its own bolt and lug; measure below 0.1 ohm from the plug's earth pin to the chassis.",
              holds: "service",
            }),
          ];
        }
        const bridges = allIn(model, life, "capacitor").filter(
          (placed) => lineDuty(placed, side) === "line-to-chassis" && placed.state.safetyClass?.startsWith("Y") !== true,
        );
        const names = bridges.map((placed) => placed.part.name).join(", ");
        const live = bridges.length > 0;
        return [
          ...old,
          report(cordGrounding, life, part, {
            severity: live ? "danger" : "replace",
            title: live ? `Ungrounded chassis with ${names} from the line to it` : "The chassis is not grounded",
            found: live
              ? `two-wire cord; ${names} between line and chassis, not of class Y`
              : "two-wire cord on a set with a power transformer",
            shouldBe: "three-wire cord, earth bonded to the chassis",
            why: live
              ? "When that capacitor shorts, the whole line voltage stands on the metal, and nothing trips."
              : "A winding that breaks down to the core puts line voltage on the metal, and nothing trips.",
            action: `${live ? `Take out ${names} or fit a class Y part of 4.7 nF at most, and fit` : "Fit"} a three-wire cord: hot to the fuse, earth to the chassis with its own bolt.`,
            holds: live ? "current-limited" : "service",
            order: [
              {
                what: "three-wire line cord with moulded plug, and a strain relief to fit the chassis",
                quantity: 1,
                for: part.name,
                why: "ungrounded",
              },
            ],
          }),
        ];
      });
    });
  },
};

function textIn(part: Part, life: Life): string | undefined {
  const { marked, fitted } = part.asWritten;
  return life === "planned" || part.change !== "planned" ? (fitted ?? marked) : marked;
}

function oldCord(life: Life, part: Part, era: number | undefined): Finding {
  return report(cordGrounding, life, part, {
    severity: "watch",
    title: `${part.name} is an original cord`,
    found: `cord of about ${era ?? "unknown age"}`,
    shouldBe: "insulation that bends without a crack, over its whole length and inside the set",
    why: "Rubber hardens and falls off the copper, first where the cord enters the chassis.",
    action: "Bend it along its length, unplugged; change it at the first crack.",
  });
}
