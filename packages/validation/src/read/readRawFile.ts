import { type CsvRecord, csvRecords, Problems, readJson, type SourceText, sourceText } from "@underchassis/source-text";
import { fileKindOf, isRecordKind } from "../model/fileKind.ts";
import type { FileEntry } from "../model/fileSource.ts";
import type { RawFile, ReaderFault } from "../model/subjects.ts";
import { shapeOf } from "../shared/schemaOrder.ts";
import { scanText } from "./quickScan.ts";
import { RECORD_LIMITS, TABLE_LIMITS } from "./recordLimits.ts";
import { surveyOf } from "./survey.ts";

const strict = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true });
const lenient = new TextDecoder("utf-8", { ignoreBOM: true });

/** Decodes a file and readies what rules ask of its text; parses nothing yet. @param bytes its content, undefined when it was not read */
export function readRawFile(entry: FileEntry, bytes: Uint8Array | undefined, kind = fileKindOf(entry.path)): RawFile {
  let utf8 = true;
  let text = "";
  if (bytes !== undefined) {
    try {
      text = strict.decode(bytes);
    } catch {
      utf8 = false;
      text = lenient.decode(bytes);
    }
  }
  let source: SourceText | undefined;
  let faults: readonly ReaderFault[] | undefined;
  let table: readonly CsvRecord[] | undefined;
  const file: RawFile = {
    path: entry.path,
    kind,
    link: entry.link,
    bytes: entry.bytes,
    utf8,
    ascii: bytes !== undefined && utf8 && text.length === bytes.length,
    text,
    source: () => (source ??= sourceText(entry.path, text)),
    faults: () => (faults ??= file.path.endsWith(".csv") ? tableFaults(file).faults : jsonFaults(file)),
    rows: () => {
      if (table === undefined) {
        const read = tableFaults(file);
        table = read.rows;
        faults ??= read.faults;
      }
      return table;
    },
    value: undefined,
  };
  return file;
}

/** Parses a JSON file; `value` is set when there is nothing that keeps it from being read. */
export function parseRecord(file: RawFile): void {
  try {
    const text = file.text.charCodeAt(0) === 0xfeff ? file.text.slice(1) : file.text;
    const value: unknown = JSON.parse(text);
    const survey = surveyOf(value, isRecordKind(file.kind) ? shapeOf(file.kind) : undefined);
    const { names, longNumber } = scanText(text);
    // What JSON.parse lets pass, a name written twice among it, is looked at closely only where there may be some.
    const odd = survey.odd || survey.names !== names;
    if (!odd || file.faults().length === 0) file.value = { parsed: value, odd: odd || longNumber, survey };
  } catch {
    // The close reading says where and why.
    if (file.faults().length === 0) throw new Error(`${file.path} is not JSON, but nothing is found wrong with it`);
  }
}

/** What the reader of JSON that knows every place has to say of a file. */
function jsonFaults(file: RawFile): readonly ReaderFault[] {
  const problems = new Problems();
  readJson(file.source(), RECORD_LIMITS, problems);
  return faultsOf(problems);
}

function tableFaults(file: RawFile): { rows: readonly CsvRecord[]; faults: readonly ReaderFault[] } {
  const problems = new Problems();
  const rows = csvRecords(file.source(), TABLE_LIMITS, problems) ?? [];
  return { rows, faults: faultsOf(problems) };
}

function faultsOf(problems: Problems): readonly ReaderFault[] {
  return problems
    .list()
    .filter(({ code }) => code !== "byte-order-mark")
    .map(({ code, line, column, length, message, expected, received, help, nearest }) => ({
      code,
      ...(line === undefined || column === undefined ? {} : { at: { line, column, length: length ?? 1 } }),
      message,
      ...(expected === undefined ? {} : { expected }),
      ...(received === undefined ? {} : { received }),
      ...(help === undefined ? {} : { help }),
      ...(nearest === undefined ? {} : { nearest }),
    }));
}
