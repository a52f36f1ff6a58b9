export type { Diagnostic, Location } from "@underchassis/source-text";
