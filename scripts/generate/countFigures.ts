/** How well a figure is founded, weakest first. */
export const FIGURE_KINDS = ["from-memory", "common-practice", "derived", "published"] as const;
export type FigureKind = (typeof FIGURE_KINDS)[number];
export type FigureCounts = Record<FigureKind, number>;

/** Numbers that are no figures of the trade: versions, order of printing, relative odds, years, how many of something. */
const NOT_FIGURES = new Set([
  "schemaVersion",
  "format",
  "rank",
  "weight",
  "kitBuilt",
  "era",
  "count",
  "fault",
  "$schema",
  "id",
  "source",
  "sources",
  "tolerance",
  "recomputed",
]);

/** A number with a unit, as texts give quantities. */
const QUANTITY = /\d\s?(?:%|[kMGmunp]?(?:V|A|W|F|H|Hz|J|S)\b|[kMG]?ohm\b|s\b|min\b|ms\b|C\b|mm\b|mfd\b|mH\b|V\b)/;

export const noFigures = (): FigureCounts => ({ "from-memory": 0, "common-practice": 0, derived: 0, published: 0 });

const isKind = (kind: string | undefined): kind is FigureKind => FIGURE_KINDS.some((known) => known === kind);

/** The weakest kind of several sources: a figure is founded no better than that. */
function weakest(ids: readonly unknown[], kindOf: ReadonlyMap<string, string>): FigureKind | undefined {
  const kinds = ids.map((id) => kindOf.get(String(id))).filter(isKind);
  return FIGURE_KINDS.find((kind) => kinds.includes(kind));
}

/** How a worked example stands to its work, in its own words. */
const EXAMPLE_KINDS: Readonly<Record<string, FigureKind>> = {
  checked: "published",
  transcription: "published",
  derived: "derived",
  memory: "from-memory",
};

function ownKind(node: Readonly<Record<string, unknown>>, kindOf: ReadonlyMap<string, string>): FigureKind | undefined {
  if (typeof node.source === "object" && node.source !== null && "status" in node.source) return EXAMPLE_KINDS[String(node.source.status)];
  if (typeof node.source === "string") return weakest([node.source], kindOf);
  return Array.isArray(node.sources) ? weakest(node.sources, kindOf) : undefined;
}

/**
 * Counts the figures of one JSON record by how well they are founded. A figure is a number, or a text that holds a number with a unit
 * (once a text), under the nearest `source` or `sources` beside or above it; of several sources at once the weakest counts.
 *
 * @param record one parsed record
 * @param kindOf kind of each source id, as in datasets/sources.csv
 */
export function countFigures(record: unknown, kindOf: ReadonlyMap<string, string>): FigureCounts {
  const counts = noFigures();
  const visit = (value: unknown, above: FigureKind | undefined): void => {
    if (typeof value === "number" || (typeof value === "string" && QUANTITY.test(value))) {
      if (above !== undefined) counts[above] += 1;
      return;
    }
    if (Array.isArray(value)) {
      for (const item of value) visit(item, above);
      return;
    }
    if (value === null || typeof value !== "object") return;
    const node = value as Readonly<Record<string, unknown>>;
    const kind = ownKind(node, kindOf) ?? above;
    for (const [key, child] of Object.entries(node)) if (!NOT_FIGURES.has(key)) visit(child, kind);
  };
  visit(record, undefined);
  return counts;
}

/** Counts the figures of a table's row: cells that are a number, under the row's own source. */
export function countRow({ source, ...cells }: Readonly<Record<string, string>>, kindOf: ReadonlyMap<string, string>): FigureCounts {
  const counts = noFigures();
  const kind = weakest([source], kindOf);
  if (kind !== undefined) counts[kind] = Object.values(cells).filter((cell) => cell.trim() !== "" && Number.isFinite(Number(cell))).length;
  return counts;
}

export function addFigures(one: FigureCounts, other: FigureCounts): FigureCounts {
  return Object.fromEntries(FIGURE_KINDS.map((kind) => [kind, one[kind] + other[kind]])) as FigureCounts;
}
