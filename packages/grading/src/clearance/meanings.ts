import type { ClearanceLevel } from "../model/index.ts";

/** What each step of bringing-up means, and what it does not. */
export const MEANINGS: Record<ClearanceLevel, string> = {
  none: "No power at all, not even through a current limiter, until what is listed is cleared.",
  "current-limited":
    "The checks that could be made found nothing against a first power-up through a current limiter. Nothing more is said than that.",
  "full-line":
    "The checks that could be made found nothing against running it on the full line at the bench, attended. It is not ready to be handed back.",
  service:
    "The checks that could be made found nothing against handing it back with this record. Old equipment still fails; local codes and a licensed practitioner have the last word on line wiring.",
};
