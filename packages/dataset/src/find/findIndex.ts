import MiniSearch from "minisearch";
import type { FindDocument, FindKind } from "./foundDocument.ts";
import { quoteOf } from "./quoteOf.ts";
import { termsOf } from "./termsOf.ts";

/** Something found, best first. */
export interface FindHit {
  kind: FindKind;
  id: string;
  title: string;
  /** The piece of it that answers best, in its own words. */
  quote: string;
  use: string;
  /** The question names it by its id or another of its names. */
  exact: boolean;
  /** Larger is better; comparable within one question only. */
  score: number;
}

export interface FindOptions {
  /** Kinds to look at; absent or empty: all. */
  kinds?: readonly FindKind[];
  /** At most so many hits; default 10. */
  top?: number;
}

export interface FindIndex {
  find(question: string, options?: FindOptions): FindHit[];
  /** Every word that stands in what can be found, for those who misspell one. */
  words(): string[];
}

const DEFAULT_TOP = 10;
/** Of the title, and of the text that stands first (the symptom, the summary), against the rest. */
const BOOST = { title: 2.5, lead: 1.5 };
/** Words that say how much of something: they tell less than what it is. */
const QUALIFIERS: ReadonlySet<string> = new Set(["low", "loud", "high", "bad", "weak", "strong", "little", "much"]);
const QUALIFIER_BOOST = 0.5;
/** Letters that may be wrong, as a share of a word that is long enough to bear it. */
const FUZZY = 0.2;
const SHORTEST_FUZZY = 5;

const keyOf = ({ kind, id }: FindDocument): string => `${kind} ${id}`;
const bare = (name: string): string =>
  name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "");

interface Found {
  document: FindDocument;
  score: number;
  /** Terms of the document that the question's terms met. */
  matched: readonly string[];
  exact: boolean;
}

const hitOf = ({ document, score, matched, exact }: Found): FindHit => {
  const { kind, id, title, use } = document;
  return { kind, id, title, quote: quoteOf(document, new Set(matched)), use, exact, score };
};

/** A document with its terms, as they go into the index. */
interface Entry {
  document: FindDocument;
  key: string;
  title: readonly string[];
  lead: readonly string[];
  texts: readonly string[];
}

const once = (text: string): string[] => [...new Set(termsOf(text))];

const entryOf = (document: FindDocument): Entry => ({
  document,
  key: keyOf(document),
  title: once([document.title, document.id, ...(document.names ?? [])].join(" . ")),
  lead: once(document.texts[0] ?? ""),
  texts: once(document.texts.slice(1).join(" . ")),
});

const FIELDS = ["title", "lead", "texts"] as const;

/**
 * What may answer: to index all that cannot would take most of a short command's time. A term that stands nowhere may be a slip of the
 * pen for any word, so then everything may answer.
 */
function candidates(entries: readonly Entry[], terms: readonly string[]): readonly Entry[] {
  const met = new Set<string>();
  const meets = (word: string): boolean =>
    terms.some((term) => {
      const meeting = term.length >= SHORTEST_FUZZY ? word.startsWith(term) : word === term;
      if (meeting) met.add(term);
      return meeting;
    });
  const answering = entries.filter((entry) => FIELDS.filter((field) => entry[field].some(meets)).length > 0);
  return terms.every((term) => met.has(term) || term.length < SHORTEST_FUZZY) ? answering : entries;
}

function searchOver(entries: readonly Entry[]): MiniSearch<Entry> {
  const search = new MiniSearch<Entry>({
    idField: "key",
    fields: [...FIELDS],
    // The fields are terms already; only questions come as plain text.
    extractField: (entry, field) => (field === "key" ? entry.key : entry[field as (typeof FIELDS)[number]].join(" ")),
    tokenize: (text) => text.split(" "),
    processTerm: (term) => term,
    searchOptions: { tokenize: termsOf, processTerm: (term) => term },
  });
  search.addAll(entries);
  return search;
}

/**
 * An index over documents, held in memory. Hits whose id or name is the question itself come first; then full text: what holds more of
 * the question's terms ranks higher, titles count more than texts, words that begin with a term or are nearly it count less.
 *
 * @param documents what can be found; their ids differ within a kind
 */
export function findIndex(documents: readonly FindDocument[]): FindIndex {
  const entries = documents.map(entryOf);
  const byKey = new Map(entries.map((entry) => [entry.key, entry.document]));
  const words = new Set(entries.flatMap((entry) => FIELDS.flatMap((field) => entry[field])));
  const named = (question: string): FindDocument[] =>
    documents.filter(({ id, names }) => [id, ...(names ?? [])].some((name) => bare(name) === bare(question)));

  return {
    find(question, { kinds = [], top = DEFAULT_TOP } = {}) {
      const isAsked = ({ kind }: FindDocument): boolean => kinds.length === 0 || kinds.includes(kind);
      const terms = once(question);
      const exact = named(question).filter(isAsked);
      const asked = candidates(entries, terms).filter(({ document }) => isAsked(document) && !exact.includes(document));
      const rest = searchOver(asked)
        .search(question, {
          boost: BOOST,
          boostTerm: (term) => (QUALIFIERS.has(term) ? QUALIFIER_BOOST : 1),
          prefix: (term) => term.length >= SHORTEST_FUZZY,
          fuzzy: (term) => (term.length >= SHORTEST_FUZZY && !words.has(term) ? FUZZY : false),
        })
        .flatMap(({ id, score, queryTerms, terms: matched }): Found[] => {
          const document = byKey.get(String(id));
          const share = new Set(queryTerms).size / Math.max(1, terms.length);
          return document === undefined ? [] : [{ document, score: score * share ** 2, matched, exact: false }];
        })
        .sort((a, b) => b.score - a.score || (a.document.id < b.document.id ? -1 : 1));
      const best = (rest[0]?.score ?? 0) + 1;
      return [...exact.map((document): Found => ({ document, score: best, matched: [], exact: true })), ...rest].slice(0, top).map(hitOf);
    },
    words: () => {
      const all = documents.flatMap(({ id, title, names = [], texts }) => [
        ...names,
        id,
        ...`${title} ${texts.join(" ")}`.split(/[^\p{L}\p{N}+]+/u),
      ]);
      return [...new Set(all.map((word) => word.toLowerCase()))].filter((word) => word.length > 2).sort();
    },
  };
}
