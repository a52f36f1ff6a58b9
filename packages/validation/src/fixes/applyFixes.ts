import type { TableDescriptions } from "@underchassis/dataset";
import { fileKindOf, isRecordKind } from "../model/fileKind.ts";
import { parseRecord, readRawFile } from "../read/readRawFile.ts";
import { readTable } from "../read/readTable.ts";
import { withFinalNewline, withLineFeeds, withoutByteOrderMark } from "./bytes.ts";
import { withModernUnits } from "./modernUnits.ts";
import { withOrderedProperties } from "./orderedProperties.ts";
import { withSchemaLink } from "./schemaLink.ts";
import { withSortedRows } from "./sortedRows.ts";

/**
 * A file with everything mended that needs no judgement: byte order mark, line ends, last line, the schema's address, order of properties,
 * old spellings of units, order of rows. Applying it again changes nothing. A file that cannot be read (encoding, syntax) comes back as it is.
 *
 * @param path - from the repository's root, forward slashes
 * @param bytes - the file's content
 * @param descriptions - what tables.json says, for the order of rows
 * @returns the text as it should be, or undefined when nothing is to be changed
 */
export function applyFixes(path: string, bytes: Uint8Array, descriptions: TableDescriptions | undefined): string | undefined {
  const kind = fileKindOf(path);
  const file = readRawFile({ path, link: false, bytes: bytes.length }, bytes);
  if (kind === undefined || !file.utf8 || file.text.trim() === "") return undefined;
  if (path.endsWith(".json")) {
    parseRecord(file);
    if (file.value === undefined) return undefined;
  } else if (file.faults().length > 0) return undefined;
  let text = withFinalNewline(withLineFeeds(withoutByteOrderMark(file.text)));
  if (isRecordKind(kind)) text = withModernUnits(kind, withOrderedProperties(kind, withSchemaLink(path, kind, text)));
  const entry = { path, link: false, bytes: text.length };
  if (path.endsWith(".csv")) {
    const table = readTable(readRawFile(entry, new TextEncoder().encode(text)));
    if (table !== undefined) text = withSortedRows(table, descriptions);
  }
  return text === file.text ? undefined : text;
}
