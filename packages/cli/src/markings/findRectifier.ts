import type { RectifierLimit } from "@underchassis/calc";
import { closest } from "fastest-levenshtein";
import { InputError } from "../inputError.ts";

/**
 * What a rectifier tube's record says of the capacitor behind it. Reads the datasets, which nothing else here needs.
 *
 * @throws InputError when no record has that name, or the record gives no largest capacitor
 */
export async function findRectifier(type: string): Promise<RectifierLimit> {
  const { loadDataset } = await import("@underchassis/dataset/load");
  const { tubes } = loadDataset();
  const name = type.trim().toUpperCase();
  const tube = tubes.get(name);
  const usable = [...tubes].filter(([, { limits }]) => limits?.maxInputFarads !== undefined).map(([key]) => key);
  if (!tube)
    throw new InputError("--rectifier", `no tube "${type}"`, `nearest: ${closest(name, usable)}; records give ${usable.join(", ")}`);
  const { limits } = tube;
  if (limits?.maxInputFarads === undefined) {
    const why = tube.class.includes("rectifier") ? "its record gives no largest input capacitor" : "it is no rectifier";
    throw new InputError("--rectifier", `${name}: ${why}`, `records that give one: ${usable.join(", ")}`);
  }
  return { type: name, maxInputFarads: limits.maxInputFarads, source: limits.source };
}
