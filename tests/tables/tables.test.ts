import { readdirSync, readFileSync } from "node:fs";
import { basename } from "node:path";
import { loadDataset } from "@underchassis/dataset/load";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, it } from "vitest";
import { cellsOf, descriptions, folder, unsorted, wrongCell } from "./describedTables.ts";

const dataset = loadDataset();
const sources = new Set(dataset.sources.keys());

describe("every reference table", () => {
  it("is described, and every description has its table", () => {
    const files = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".csv"));
    expect(descriptions.tables.map(({ file }) => file)).toEqual(files.toSorted());
    expect(new Set(files.map((file) => basename(file))).size).toBe(files.length);
    expect(dataset.tables.size).toBe(files.length);
  });

  it("has a description that keeps its own schema", () => {
    const schema = JSON.parse(readFileSync("schemas/table.schema.json", "utf8")) as object;
    const ajv = new Ajv2020({ allErrors: true, strict: true, allowUnionTypes: true });
    const valid = ajv.validate(schema, descriptions);
    expect(ajv.errorsText()).toBe("No errors");
    expect(valid).toBe(true);
  });

  it.each(descriptions.tables.map((table) => [table.file, table] as const))(
    "%s has the columns, cells and order of its description",
    (file, table) => {
      const { header, rows } = cellsOf(file);
      expect(header).toEqual(table.columns.map(({ name }) => name));
      expect(header).toContain("source");
      expect(rows.length).toBeGreaterThan(0);
      const wrong = rows.flatMap((row, place) =>
        table.columns.flatMap((column, at) => {
          const complaint = wrongCell(column, row[at] ?? "", sources);
          return complaint === undefined ? [] : [`row ${place + 1}, ${column.name} "${row[at]}": ${complaint}`];
        }),
      );
      expect(wrong).toEqual([]);
      expect(unsorted(table, header, rows)).toEqual([]);
    },
  );
});

describe("the watch over tables", () => {
  const [described] = descriptions.tables.filter(({ file }) => file === "preferred-values.csv");
  const { header, rows } = cellsOf("preferred-values.csv");

  it("sees a swapped, a repeated and a stray row", () => {
    if (!described) throw new Error("preferred-values.csv is not described");
    const [first = [], second = [], ...others] = rows;
    expect(unsorted(described, header, [second, first, ...others])).not.toEqual([]);
    expect(unsorted(described, header, [first, first, second, ...others])).not.toEqual([]);
    expect(unsorted(described, header, [second, ...others, first])).not.toEqual([]);
  });

  it("sees a cell that does not fit its column", () => {
    const column = (type: "number" | "source" | "choice") => ({ name: "x", type, meaning: "x", among: ["a", "b"] });
    expect(wrongCell(column("number"), "1,5", sources)).toBe("not a number");
    expect(wrongCell(column("number"), "", sources)).toBe("empty");
    expect(wrongCell(column("source"), "hearsay", sources)).toBe("no such source");
    expect(wrongCell(column("choice"), "c", sources)).toBe("not one of a, b");
  });
});
