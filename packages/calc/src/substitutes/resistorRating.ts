import { formatQuantity } from "../quantities/formatQuantity.ts";
import type { Rating, SubstituteContext, SubstitutePart } from "./substitution.ts";

type Body = readonly [watts: number, volts: number];

/** Watts and limiting volts of moulded composition (S12; 1/8 and 2 W from-memory). The table of bodies has the same rows. */
export const compositionBodies: readonly Body[] = [
  [0.125, 150],
  [0.25, 250],
  [0.5, 350],
  [1, 500],
  [2, 750],
];

/** The same of metal film of normal size (S36). */
export const metalFilmBodies: readonly Body[] = [
  [0.125, 150],
  [0.25, 250],
  [0.5, 300],
  [1, 350],
  [2, 500],
  [3, 500],
  [5, 500],
];

/** What the old part could stand without end: the lesser of its power's voltage and its body's. Undefined without watts. */
function oldVolts({ value, ratedWatts, composition }: SubstitutePart): number | undefined {
  if (ratedWatts === undefined) return undefined;
  const byPower = Math.sqrt(ratedWatts * value);
  if (composition !== undefined && composition !== "carbon-composition") return byPower;
  const body = compositionBodies.findLast(([watts]) => watts <= ratedWatts);
  return Math.min(byPower, body?.[1] ?? byPower);
}

function wattsRating(watts: number, times: number, body: Body | undefined): Rating {
  const least = times * watts;
  const standard = body?.[0] ?? metalFilmBodies.find(([rated]) => rated >= least)?.[0];
  const old = `the old part's ${formatQuantity(watts, "power")}`;
  const text = times === 1 ? `not below ${old}` : `${times} times ${old}: modern bodies are smaller and run hotter`;
  return { quantity: "watts", least, ...(standard === undefined ? {} : { standard }), rule: { text, source: "restorer-posts" } };
}

function voltsRating(volts: number, known: boolean, body: Body | undefined): Rating {
  const text = known
    ? "the voltage across it: a body has a limit apart from its watts; above 500 V two or more in series"
    : "what the old body could stand, by its power or its limit: a film body of the same watts may stand less";
  return { quantity: "body volts", least: volts, ...(body ? { standard: body[1] } : {}), rule: { text, source: "film-resistor-sheets" } };
}

/** Watts and body volts a new film part needs: `times` the old watts; the voltage across it, or all that the old body could stand. */
export function resistorRatings(part: SubstitutePart, context: SubstituteContext, times: number): { ratings: Rating[]; missing: string[] } {
  const { ratedWatts } = part;
  const { workingVolts } = context;
  const volts = workingVolts ?? oldVolts(part);
  const body = metalFilmBodies.find(([watts, limit]) => watts >= times * (ratedWatts ?? 0) && limit >= (volts ?? 0));
  return {
    ratings: [
      ...(ratedWatts === undefined ? [] : [wattsRating(ratedWatts, times, body)]),
      ...(volts === undefined ? [] : [voltsRating(volts, workingVolts !== undefined, body)]),
    ],
    missing: [
      ...(ratedWatts === undefined ? ["the old part's watts: size alone does not tell them across the years"] : []),
      ...(workingVolts === undefined ? ["the voltage across it"] : []),
    ],
  };
}
