import { parseSections } from "../markings/parseSections.ts";
import { nearestSpelling } from "../quantities/nearestSpelling.ts";
import { problem, quoted } from "../quantities/problem.ts";
import type { Marking, MarkingContext, Result } from "../quantities/types.ts";
import { roles } from "./roles.ts";
import type { Role, SubstituteContext, Substitution } from "./substitution.ts";

/** What holds of every part that is taken out. */
const always = "Disconnect the line, discharge every filter capacitor and measure it discharged before a lead is touched.";

function roleNamed(id: string): Result<Role> {
  const found = roles.find((role) => role.id === id);
  if (found) return { ok: true, value: found };
  const names = roles.map((role) => role.id);
  return problem(`${quoted(id)} is not a role`, 0, id.length, `one of ${names.join(", ")}`, nearestSpelling(id, names));
}

/**
 * What may replace an old part in its place: lowest and highest value, values that are made, ratings, make, and the rule and source of
 * each. Ohms, farads, volts, watts, hertz. A part without a value, or of another kind than the role's, is a problem. Judges the
 * part and its place alone: what a replacement does to the rest of the chassis is for a whole job to show.
 */
export function substitute(part: Marking, roleId: string, context: SubstituteContext = {}): Result<Substitution> {
  const role = roleNamed(roleId);
  if (!role.ok) return role;
  const { kind, id } = role.value;
  const { value, asWritten } = part;
  if (part.kind !== kind)
    return problem(`${quoted(asWritten)} is a ${part.kind}, the role ${id} wants a ${kind}`, 0, asWritten.length, `a ${kind}`);
  if (value === undefined || !(value > 0) || !Number.isFinite(value))
    return problem(`${quoted(asWritten)} gives no value to replace`, 0, asWritten.length, `a ${kind} of more than nothing`);
  const { cautions = [], ...found } = role.value.substitute({ ...part, value }, context);
  return { ok: true, value: { role: id, part, ...found, cautions: [always, ...cautions] } };
}

/** The same for a marking as it stands on the part; one result a section. */
export function substituteMarking(text: string, roleId: string, context: SubstituteContext = {}): Result<Substitution>[] {
  const role = roleNamed(roleId);
  if (!role.ok) return [role];
  const reading: MarkingContext = { ...role.value.hint, ...(context.era === undefined ? {} : { era: context.era }) };
  return parseSections(text, role.value.kind, reading).map((marking) =>
    marking.ok ? substitute(marking.value, roleId, context) : marking,
  );
}
