import { type Formula, type FormulaInput, formatFormulaValue } from "@underchassis/calc/formulas";

/** Rows of equal columns, two spaces apart, indented by two. */
export function columns(rows: readonly (readonly string[])[]): string {
  const widths = rows.reduce<number[]>((all, row) => row.map((cell, index) => Math.max(all[index] ?? 0, cell.length)), []);
  return rows.map((row) => `  ${row.map((cell, index) => cell.padEnd(widths[index] ?? 0)).join("  ")}`.trimEnd()).join("\n");
}

/** The limits of one argument in words: "above 0 ohm, at most 5 A; one or more". */
function limitsOf(input: FormulaInput): string {
  const show = (bound: number): string => formatFormulaValue(bound, input.dimension);
  const limits = [
    ...(input.above === undefined ? [] : [`above ${show(input.above)}`]),
    ...(input.minimum === undefined ? [] : [`at least ${show(input.minimum)}`]),
    ...(input.below === undefined ? [] : [`below ${show(input.below)}`]),
    ...(input.maximum === undefined ? [] : [`at most ${show(input.maximum)}`]),
    ...(input.whole ? ["whole"] : []),
    ...(input.open ? ["may be open"] : []),
    ...(input.list ? ["give it once for each"] : []),
    ...(input.default === undefined ? [] : [`${show(input.default)} if not given`]),
  ];
  return limits.length === 0 ? "" : `(${limits.join(", ")})`;
}

/** What a formula takes: name, symbol, dimension, meaning and limits of every argument. */
export function describeInputs(formula: Formula): string {
  return columns(
    Object.entries(formula.inputs).map(([name, input]) => [name, input.symbol, input.dimension, `${input.meaning} ${limitsOf(input)}`]),
  );
}

/** Every formula with its title, by area. */
export function listFormulas(formulas: readonly Formula[]): string {
  const areas = [...new Set(formulas.map(({ area }) => area))];
  const width = Math.max(...formulas.map(({ id }) => id.length));
  const blocks = areas.map((area) => {
    const rows = formulas.filter((formula) => formula.area === area).map(({ id, title }) => `  ${id.padEnd(width)}  ${title}`);
    return [area, ...rows].join("\n");
  });
  return `${blocks.join("\n\n")}\n\nunderchassis work <formula> name=value ... works one of them.\n`;
}
