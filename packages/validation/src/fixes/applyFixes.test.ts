import type { TableDescriptions } from "@underchassis/dataset";
import { expect, it } from "vitest";
import { allRules } from "../rules/allRules.ts";
import { validateFiles } from "../run/validateFiles.ts";
import { memorySource } from "../testing/memorySource.ts";
import { AT, SOUND_FILES } from "../testing/soundFiles.ts";
import { applyFixes } from "./applyFixes.ts";

const descriptions = JSON.parse(SOUND_FILES[AT.tables]) as TableDescriptions;
const fix = (path: string, text: string): string | undefined => applyFixes(path, new TextEncoder().encode(text), descriptions);

const stage = SOUND_FILES[AT.stage];
const caution = SOUND_FILES[AT.caution];

/** Each spoilt file is mended to the sound one, to the byte. */
const SPOILT: readonly (readonly [name: string, path: keyof typeof SOUND_FILES, text: string, code: string])[] = [
  ["a byte order mark", AT.tube, `\ufeff${SOUND_FILES[AT.tube]}`, "UC-106"],
  ["CRLF", AT.stage, stage.replaceAll("\n", "\r\n"), "UC-107"],
  ["no line end", AT.bands, SOUND_FILES[AT.bands].trimEnd(), "UC-108"],
  ["blank lines at the end", AT.tube, `${SOUND_FILES[AT.tube]}\n\n`, "UC-108"],
  ["no schema", AT.caution, caution.replace(/ {2}"\$schema".*\n/, ""), "UC-306"],
  ["another schema", AT.caution, caution.replace("../../schemas/caution", "./caution"), "UC-306"],
  ["old spellings", AT.stage, stage.replaceAll("40 uF", "40 mfd"), "UC-409"],
  ["properties exchanged", AT.caution, caution.replace(/( {2}"title".*\n)( {2}"text".*\n)/, "$2$1"), "UC-504"],
  ["rows exchanged", AT.bands, SOUND_FILES[AT.bands].replace(/(black.*\n)(brown.*\n)/, "$2$1"), "UC-508"],
  ["sources exchanged", AT.sources, SOUND_FILES[AT.sources].replace(/(common.*\n)(from.*\n)/, "$2$1"), "UC-512"],
];

it.each(SPOILT)("mends %s", (_name, path, text, code) => {
  expect(text).not.toBe(SOUND_FILES[path]);
  const found = validateFiles(memorySource({ ...SOUND_FILES, [path]: text }), { rules: allRules }).diagnostics;
  expect([...new Set(found.map((diagnostic) => diagnostic.code))]).toEqual([code]);
  expect(found.every((diagnostic) => diagnostic.fix !== undefined)).toBe(true);
  const mended = fix(path, text);
  expect(mended).toBe(SOUND_FILES[path]);
  expect(fix(path, mended ?? "")).toBeUndefined();
});

it("mends everything at once, in objects on one line and on many", () => {
  const exchanged = caution.replace(/( {2}"title".*\n)( {2}"text".*\n)/, "$2$1").replace(/ {2}"\$schema".*\n/, "");
  expect(fix(AT.caution, `\ufeff${exchanged.trimEnd().replaceAll("\n", "\r\n")}`)).toBe(caution);
  const heater = SOUND_FILES[AT.tube].replace('{ "volts": 6.3, "amps": 0.6,', '{ "amps": 0.6, "volts": 6.3,');
  expect(fix(AT.tube, heater)).toBe(SOUND_FILES[AT.tube]);
});

it.each([
  ["broken JSON", AT.tube, '\ufeff{ "id": "6x4", }\r\n'],
  ["a name twice", AT.tube, '{ "id": "6x4", "id": "6x4" }'],
  ["a broken table", AT.bands, 'colour,figure,note,source\r\nred,2,1/4" wire,x'],
  ["an unknown place", "datasets/tube/6x4.json", '{ "id": "6x4" }'],
  ["a sound file", AT.stage, stage],
])("leaves %s as it is", (_name, path, text) => expect(fix(path, text)).toBeUndefined());

it("leaves bytes that are no UTF-8", () => {
  expect(applyFixes(AT.tube, new Uint8Array([0x7b, 0xff, 0x7d]), descriptions)).toBeUndefined();
});

it.each(allRules.filter(({ fixable }) => fixable === true).map(({ code }) => code))(
  "%s, which says that it is mended, is among those tried",
  (code) => {
    expect(SPOILT.map((one) => one[3])).toContain(code);
  },
);
