import { expect, it } from "vitest";
import { prefixedQuantityWord, quantityWord } from "./quantityWords.ts";

// common-practice: how meters and service sheets label their functions.
it.each([
  ["V DC", "dc-volts"],
  ["VAC", "ac-volts"],
  ["V RMS", "ac-volts"],
  ["Ripple", "ripple-volts"],
  ["V p-p", "ripple-volts"],
  ["ohm", "ohms"],
  ["\u2126", "ohms"],
  ["A DC", "dc-amps"],
  ["dc-volts", "dc-volts"],
])("reads %s as %s", (written, word) => {
  expect(quantityWord(written)).toBe(word);
});

it("does not guess", () => {
  for (const written of ["V", "A", "mA DC", "watts", ""]) expect(quantityWord(written)).toBeUndefined();
  expect(prefixedQuantityWord("mA DC")).toBe("dc-amps");
});
