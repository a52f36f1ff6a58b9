import type { Report } from "@underchassis/dataset";

type Source = Report["sources"][number];

const kindWords: Readonly<Record<Source["kind"], string>> = {
  published: "published",
  "common-practice": "common practice",
  "from-memory": "from memory",
  derived: "derived",
  computed: "computed from the chassis",
};

/** How a source's kind is said: "common practice". */
export const kindWord = (kind: Source["kind"]): string => kindWords[kind];

/** A source as it stands beside a figure, with its place in the report's list of sources when it is there. */
export interface SourceName {
  /** "S58 (published)", "common practice". */
  text: string;
  /** Index into report.sources; -1 when the list does not hold it. */
  index: number;
}

/** Names sources by id, always with their kind, so that a figure from memory says so where it stands. */
export function sourceNames(report: Report): (id: string) => SourceName {
  const places = new Map(report.sources.map((source, index) => [source.id, index]));
  return (id) => {
    const index = places.get(id) ?? -1;
    const source = report.sources[index];
    if (source) {
      const word = kindWord(source.kind);
      return { text: id === source.kind ? word : `${id} (${word})`, index };
    }
    const bare = Object.hasOwn(kindWords, id) ? kindWords[id as Source["kind"]] : undefined;
    return { text: bare ?? `${id} (not in the list of sources)`, index: -1 };
  };
}
