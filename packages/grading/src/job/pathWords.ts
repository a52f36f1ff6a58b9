import { pathWords as generic, type Path, type PathVocabulary } from "@underchassis/source-text";

const VOCABULARY: PathVocabulary = {
  top: "the job",
  members: {
    stages: "stage",
    parts: "part",
    readings: "reading",
    conditions: "condition",
    meters: "meter",
    windings: "winding",
    notes: "note",
    points: "point",
  },
};

/** A path of the job in words, innermost first: `"marked" of part "reservoir" of stage "supply"`, `the job` for the top. */
export function pathWords(path: Path, job: unknown): string {
  return generic(path, job, VOCABULARY);
}
