import type { JobCircuit } from "./case.ts";
import { FULL_WAVE } from "./fullWave.ts";
import { SINGLE_WINDING } from "./singleWinding.ts";
import { SPECIAL } from "./special.ts";

/** Every kind of supply that a job can be made of. */
export const JOB_CIRCUITS: readonly JobCircuit[] = [...FULL_WAVE, ...SINGLE_WINDING, ...SPECIAL];
