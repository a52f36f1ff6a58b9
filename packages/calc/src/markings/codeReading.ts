import type { Dimension, Tolerance } from "../quantities/types.ts";

/** One way to read a marking code. */
export interface CodeReading {
  /** Ohms or farads. */
  value: number;
  dimension: Dimension;
  tolerance: Tolerance;
  /** False when no mark said so and the code's or the era's default stands in. */
  toleranceWritten: boolean;
  /** Which code: "film, 5 bands", "RMA 3-dot mica" ... */
  family: string;
  /** Why it can be read so, and what speaks for or against it. */
  because: string;
  ratedVolts?: number;
  /** ppm/K; lowest and highest the mark allows. */
  temperatureCoefficientPpm?: readonly [number, number];
  /** Mica characteristic letter. */
  characteristic?: string;
  /** Military failure rate, percent per 1000 hours. */
  failureRatePercent?: number;
  notes: readonly string[];
}
