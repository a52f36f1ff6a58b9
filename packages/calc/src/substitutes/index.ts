export { roles } from "./roles.ts";
export { substitute, substituteMarking } from "./substitute.ts";
export type { Candidate, Rating, RectifierLimit, Role, Rule, SubstituteContext, Substitution } from "./substitution.ts";
