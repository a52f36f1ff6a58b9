import { expect, it } from "vitest";
import { commonReturn, shortCircumstance, shortWindow } from "./shortWords.ts";

const plain = (text: string): string => text.replaceAll("\u00a0", " ");

it.each([
  [472, 506, "472 to 506 V"],
  [0.544, 2.23, "544 mV to 2.23 V"],
  [-3, -2, "-3 to -2 V"],
  [5, 5, "5 V"],
  [270, undefined, "at least 270 V"],
  [undefined, null, ""],
])("writes the window %s to %s as %s", (low, high, text) => {
  expect(plain(shortWindow(low, high, "V"))).toBe(text);
});

it("keeps a window on one line", () => {
  expect(shortWindow(33_100, 35_800, "ohm")).not.toContain(" ");
});

it("says condition and kind of voltage; ohms and unknown quantities by themselves", () => {
  expect(shortCircumstance("operating", "dc-volts")).toBe("operating DC");
  expect(shortCircumstance("cold", "ohms")).toBe("cold");
  expect(shortCircumstance("cold", "constructor")).toBe("cold constructor");
});

it("finds the point that most readings are taken against", () => {
  expect(commonReturn([{ to: "B+" }, { to: "chassis" }, { to: "chassis" }])).toBe("chassis");
  expect(commonReturn([])).toBe("");
});
