import type { Dataset } from "@underchassis/dataset";
import { loadDataset } from "@underchassis/dataset/load";

let loaded: Dataset | undefined;

/** The shared reference itself, read once a test file: for tests whose subject needs its tubes. */
export function referenceDataset(): Dataset {
  loaded ??= loadDataset();
  return loaded;
}
