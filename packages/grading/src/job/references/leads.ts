import { findPlace, recordOf } from "@underchassis/source-text";
import { pathWords } from "../pathWords.ts";
import { type ReferenceContext, report } from "./context.ts";
import type { Lead } from "./leadsOf.ts";
import type { PartSurvey } from "./survey.ts";

const PAIR_ONLY = new Set([
  "resistor",
  "capacitor",
  "inductor",
  "zener",
  "fuse",
  "breaker",
  "switch",
  "thermistor",
  "lamp",
  "wire",
  "load",
  "battery",
]);
const PAIR_OR_PINS = new Set(["rectifier", "regulator-tube", "potentiometer"]);
const PINS_ONLY = new Set(["tube", "cord"]);

/** Whether every part lies somewhere, and nowhere with both of its leads on one point. */
export function checkLeads(context: ReferenceContext): void {
  for (const part of context.survey.parts) {
    if (part.template === undefined && part.path?.[0] === "parts") checkPresent(context, part);
    checkShorted(context, part);
  }
}

function checkPresent(context: ReferenceContext, { kind, path, written }: PartSurvey): void {
  if (kind === undefined || path === undefined) return;
  const fitted = recordOf(written.fitted);
  const has = (name: string) => written[name] !== undefined || fitted[name] !== undefined;
  const needed = PAIR_ONLY.has(kind)
    ? ["between"]
    : PAIR_OR_PINS.has(kind)
      ? ["between", "pins"]
      : PINS_ONLY.has(kind)
        ? ["pins"]
        : kind === "transformer"
          ? ["windings"]
          : undefined;
  // A property that is there but misspelt or misshapen is the schema's to report.
  if (
    needed === undefined ||
    needed.some(has) ||
    context.misshapen.has(path.join("/")) ||
    findPlace(context.job.place, path).place.doubtful
  )
    return;
  const inTable = written.between === undefined && !("pins" in written) && needed.includes("pins");
  report(context, path, {
    code: "leads-missing",
    message: `${pathWords(path, context.job.value)} (${kind}) lies nowhere`,
    expected: needed.includes("between")
      ? `"between" with its two points${needed.includes("pins") ? ', or "pins"' : ""} ("from" and "to" in a table)`
      : `"${needed[0]}" with a point for each`,
    ...(inTable && !needed.includes("between") ? { help: "parts with more than two leads stand in the job file, not in a table" } : {}),
  });
}

function checkShorted(context: ReferenceContext, part: PartSurvey): void {
  const groups = new Map<string, Lead[]>();
  for (const lead of part.leads) {
    // As found, both leads on one lug is a fault of the chassis, not of the job.
    if (lead.life === "found" || lead.group === "pins") continue;
    const group = `${lead.life} ${lead.group}`;
    groups.set(group, [...(groups.get(group) ?? []), lead]);
  }
  for (const leads of groups.values()) {
    const second = leads.find((lead, index) => leads.findIndex(({ point }) => point === lead.point) < index);
    if (second === undefined) continue;
    const problem = {
      code: "leads-shorted",
      message: `both leads of ${part.name ?? part.id} lie on "${second.point}"`,
      received: second.point,
      expected: "two different points",
    };
    if (second.path) report(context, second.path, problem);
    else reportBind(context, part, second, problem);
  }
}

/** The template puts the leads on two of its points, and the job bound both to one: the bind is what to look at. */
function reportBind(
  context: ReferenceContext,
  part: PartSurvey,
  lead: Lead,
  problem: { code: string; message: string; received: string; expected: string },
): void {
  const stage = context.survey.stages.find(({ id }) => id === part.stage);
  if (stage === undefined) return;
  const both = part.leads.filter(({ point, group }) => point === lead.point && group === lead.group).map(({ via }) => via ?? "");
  const bound = both.filter((via) => stage.bind.has(via)).pop();
  const path = bound === undefined ? (part.path ?? stage.path) : [...stage.path, "bind", bound];
  report(context, path, {
    ...problem,
    ...{
      help: `the template puts it between ${both.map((via) => `"${via}"`).join(" and ")}; write "absent": true if the chassis has no such part`,
    },
  });
}
