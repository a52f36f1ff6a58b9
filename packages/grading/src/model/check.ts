import type { ChassisModel } from "./chassis.ts";
import type { Finding } from "./finding.ts";

/** One question put to a chassis. The file's name is the id. */
export interface Check {
  id: string;
  area: "line" | "rectifiers" | "filters" | "resistors" | "standby" | "readings" | "audio" | "record" | "templates";
  title: string;
  /** The question, as a restorer would ask it. */
  question: string;
  /** What the job must hold for the question to be answerable, in words. */
  needs: string;
  sources: readonly string[];
  cautions: readonly string[];
  /** Pure: the same model gives the same findings. `good` findings say what was looked at and found right. */
  run(model: ChassisModel): readonly Finding[];
}
