import type { Dielectric } from "../quantities/types.ts";
import { type CapacitorFamily, capacitorFamilies } from "./decodeCapacitorColours.ts";

const byDielectric: Readonly<Partial<Record<Dielectric, readonly CapacitorFamily[]>>> = {
  mica: ["mica-rma-3", "mica-rma-5", "mica-aws-6", "mica-rma-6"],
  paper: ["paper-bands", "mica-aws-6"],
  film: ["polyester-bands"],
  ceramic: ["ceramic-3", "ceramic-5", "ceramic-6"],
};

/** The families of colour marks a dielectric was made in; all of them when it is not known or had none of its own. */
export function capacitorFamiliesOf(dielectric: Dielectric | undefined): readonly CapacitorFamily[] {
  return (dielectric && byDielectric[dielectric]) ?? capacitorFamilies;
}

/** What a part with marks of this family is made of; `code` settles the six dots that mica and paper share. */
export function dielectricOfFamily(family: CapacitorFamily, code: string): Dielectric {
  if (family.startsWith("ceramic")) return "ceramic";
  if (family === "polyester-bands") return "film";
  return family === "paper-bands" || code.includes("paper") ? "paper" : "mica";
}
