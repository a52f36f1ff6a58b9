import { expect, it } from "vitest";
import { SOUND_JOB, TEST_DATASET } from "./fixtures.ts";
import { loadJob } from "./loadJob.ts";

const PARTS = `stage,role,name,kind,from,to,found_from,found_to,marked,measured,measured_in,leakage,leakage_volts,fitted,fitted_type,fitted_measured,planned,removed,why,note
supply,bleeder,R1,,,,,,100k,130k,in,,,100k 5W,,99.8k,yes,,drifted,
,,C9,Capacitor,B+,chassis,,screen bus,.05 600V,,,2 mA,450 V,,,,,yes,leaks,"old
wax"
audio,,C10,capacitor,V1 plate,chassis,,,500 mmf,,,,,,,,,,,
`;
const READINGS = "at,quantity,value,line_volts,condition\nV1 plate,V DC,92,118 V,Operating\n";

function load() {
  const files = {
    job: { name: "job.json", text: SOUND_JOB },
    parts: { name: "parts.csv", text: PARTS },
    readings: { name: "readings.csv", text: READINGS },
  };
  const result = loadJob(files, TEST_DATASET);
  if (!result.ok) throw new Error(JSON.stringify(result.diagnostics));
  return result.job;
}

it("merges the tables into the job", () => {
  const { job } = load();
  expect(job.stages?.[0]?.parts?.bleeder).toEqual({
    name: "R1",
    marked: "100k",
    measured: { value: "130k", circuit: "in" },
    fitted: { marked: "100k 5W", measured: { value: "99.8k" }, planned: true, why: "drifted" },
  });
  expect(job.parts?.slice(3)).toEqual([
    {
      name: "C9",
      kind: "capacitor",
      between: ["B+", "chassis"],
      foundBetween: ["B+", "screen bus"],
      marked: ".05 600V",
      measured: { leakage: "2 mA", atVolts: "450 V" },
      removed: true,
      note: "old\nwax; leaks",
    },
    { name: "C10", kind: "capacitor", stage: "audio", between: ["V1 plate", "chassis"], marked: "500 mmf" },
  ]);
  expect(job.readings?.at(-1)).toEqual({ at: "V1 plate", quantity: "dc-volts", value: "92", lineVolts: "118 V", condition: "operating" });
});

it("finds the place of everything in the merged job", () => {
  const { locate } = load();
  const at = (path: (string | number)[], part?: "key" | "value") => {
    const { file, line, column } = locate(path, part);
    return `${file}:${line}:${column}`;
  };
  // Counted by hand in the texts above.
  expect(at(["stages", 0, "parts", "bleeder", "measured", "value"])).toBe("parts.csv:2:29");
  expect(at(["stages", 0, "parts", "bleeder"], "key")).toBe("parts.csv:2:8");
  expect(at(["parts", 3, "between", 1])).toBe("parts.csv:3:19");
  expect(at(["parts", 3, "foundBetween", 0])).toBe("parts.csv:3:16");
  expect(at(["parts", 4, "marked"])).toBe("parts.csv:5:41");
  expect(at(["readings", 3, "value"])).toBe("readings.csv:2:15");
  expect(at(["stages", 0, "parts", "reservoir", "marked"])).toBe("job.json:11:48");
  expect(at(["stages", 0, "parts", "reservoir", "marked"], "key")).toBe("job.json:11:38");
  expect(at(["title"])).toBe("job.json:3:12");
});

it("falls back to the nearest enclosing place", () => {
  const { locate } = load();
  expect(locate(["stages", 0, "parts", "reservoir", "esr", "value"])).toEqual({ file: "job.json", line: 11, column: 9 });
  expect(locate(["parts", 3, "measured", "esr"])).toMatchObject({ file: "parts.csv", line: 3 });
  expect(locate([])).toEqual({ file: "job.json", line: 1, column: 1 });
});

it("accepts a job of the most parts and readings that the format allows", () => {
  const head = SOUND_JOB.slice(0, SOUND_JOB.indexOf('"stages"'));
  const list = (count: number, item: (index: number) => unknown) =>
    JSON.stringify(Array.from({ length: count }, (_, index) => item(index)));
  const parts = list(2000, (index) => ({
    name: `R${index}`,
    kind: "resistor",
    marked: "47k",
    between: [`point ${index}`, `point ${index + 1}`],
  }));
  const readings = list(2000, (index) => ({ at: `point ${index}`, quantity: "ohms", value: "47k" }));
  expect(loadJob({ job: { name: "job.json", text: `${head}"parts": ${parts}, "readings": ${readings}}` } }, TEST_DATASET)).toMatchObject({
    ok: true,
    warnings: [],
  });
});
