import { csvRecords, Problems, readJson, type SourceText, sourceText } from "@underchassis/source-text";
import { fileKindOf } from "../model/fileKind.ts";
import type { FileEntry } from "../model/fileSource.ts";
import type { RawFile, ReaderFault } from "../model/subjects.ts";
import { needsCloseReading } from "./quickScan.ts";
import { RECORD_LIMITS, TABLE_LIMITS } from "./recordLimits.ts";

const strict = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true });
const lenient = new TextDecoder("utf-8", { ignoreBOM: true });

/** Decodes a file and readies what rules ask of its text; parses nothing yet. @param bytes its content, undefined when it was not read */
export function readRawFile(entry: FileEntry, bytes: Uint8Array | undefined): RawFile {
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
  const file: RawFile = {
    path: entry.path,
    kind: fileKindOf(entry.path),
    link: entry.link,
    bytes: entry.bytes,
    utf8,
    ascii: bytes !== undefined && utf8 && text.length === bytes.length,
    text,
    source: () => (source ??= sourceText(entry.path, text)),
    faults: () => (faults ??= readerFaults(file)),
    value: undefined,
  };
  return file;
}

/** Parses a JSON file; `value` is set when there is nothing that keeps it from being read. */
export function parseRecord(file: RawFile): void {
  try {
    const text = file.text.charCodeAt(0) === 0xfeff ? file.text.slice(1) : file.text;
    const value: unknown = JSON.parse(text);
    const odd = needsCloseReading(text, value);
    if (!odd || file.faults().length === 0) file.value = { parsed: value, odd };
  } catch {
    // The close reading says where and why.
    if (file.faults().length === 0) throw new Error(`${file.path} is not JSON, but nothing is found wrong with it`);
  }
}

/** What the reader that knows every place has to say of a file. */
function readerFaults(file: RawFile): readonly ReaderFault[] {
  const source = file.source();
  const problems = new Problems();
  const isTable = file.path.endsWith(".csv");
  if (isTable) csvRecords(source, TABLE_LIMITS, problems);
  else readJson(source, RECORD_LIMITS, problems);
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
