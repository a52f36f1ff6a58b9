// Generated from packages/validation/src/rules/; run npm run generate. Changes made here are lost.

import type { Rule } from "../model/rule.ts";
import { blankFilled } from "./bytes/blank-filled.ts";
import { byteOrderMark } from "./bytes/byte-order-mark.ts";
import { characterEscape } from "./bytes/character-escape.ts";
import { controlCharacter } from "./bytes/control-character.ts";
import { csvRows } from "./bytes/csv-rows.ts";
import { csvSyntax } from "./bytes/csv-syntax.ts";
import { fileNamePlain } from "./bytes/file-name-plain.ts";
import { filePlace } from "./bytes/file-place.ts";
import { fileSize } from "./bytes/file-size.ts";
import { finalNewline } from "./bytes/final-newline.ts";
import { hiddenCharacter } from "./bytes/hidden-character.ts";
import { jsonSyntax } from "./bytes/json-syntax.ts";
import { lineEnds } from "./bytes/line-ends.ts";
import { lookAlikeLetter } from "./bytes/look-alike-letter.ts";
import { nameForbidden } from "./bytes/name-forbidden.ts";
import { nameRepeated } from "./bytes/name-repeated.ts";
import { nestingAndLength } from "./bytes/nesting-and-length.ts";
import { numberSize } from "./bytes/number-size.ts";
import { plainCharacters } from "./bytes/plain-characters.ts";
import { symbolicLink } from "./bytes/symbolic-link.ts";
import { textEncoding } from "./bytes/text-encoding.ts";
import { cautionKnown } from "./collection/caution-known.ts";
import { deviceKnown } from "./collection/device-known.ts";
import { exampleFormula } from "./collection/example-formula.ts";
import { failureNoteKnown } from "./collection/failure-note-known.ts";
import { idUnique } from "./collection/id-unique.ts";
import { jobReadable } from "./collection/job-readable.ts";
import { roleKnown } from "./collection/role-known.ts";
import { sourceKnown } from "./collection/source-known.ts";
import { sourceUsed } from "./collection/source-used.ts";
import { tableList } from "./collection/table-list.ts";
import { templateKnown } from "./collection/template-known.ts";
import { capacitorPolarity } from "./electrical/capacitor-polarity.ts";
import { capacitorRating } from "./electrical/capacitor-rating.ts";
import { expectedFormula } from "./electrical/expected-formula.ts";
import { expectedReading } from "./electrical/expected-reading.ts";
import { jobGrade } from "./electrical/job-grade.ts";
import { rectifierDirection } from "./electrical/rectifier-direction.ts";
import { rectifierRating } from "./electrical/rectifier-rating.ts";
import { requirementDecides } from "./electrical/requirement-decides.ts";
import { requirementHolds } from "./electrical/requirement-holds.ts";
import { resistorRating } from "./electrical/resistor-rating.ts";
import { stageSimulates } from "./electrical/stage-simulates.ts";
import { tubeModel } from "./electrical/tube-model.ts";
import { tubeRating } from "./electrical/tube-rating.ts";
import { tubeWired } from "./electrical/tube-wired.ts";
import { fileName } from "./file/file-name.ts";
import { modernValues } from "./file/modern-values.ts";
import { preferredValues } from "./file/preferred-values.ts";
import { propertyOrder } from "./file/property-order.ts";
import { sourceList } from "./file/source-list.ts";
import { stageFolder } from "./file/stage-folder.ts";
import { tableCells } from "./file/table-cells.ts";
import { tableColumns } from "./file/table-columns.ts";
import { tableDescribed } from "./file/table-described.ts";
import { tableKey } from "./file/table-key.ts";
import { tableOrder } from "./file/table-order.ts";
import { tablePairs } from "./file/table-pairs.ts";
import { tubeFirstName } from "./file/tube-first-name.ts";
import { choiceKnown } from "./record/choice-known.ts";
import { conditionKnown } from "./record/condition-known.ts";
import { datasetVersion } from "./record/dataset-version.ts";
import { electrodeKnown } from "./record/electrode-known.ts";
import { exampleResult } from "./record/example-result.ts";
import { expectedDimension } from "./record/expected-dimension.ts";
import { expectedPlace } from "./record/expected-place.ts";
import { expectedWindow } from "./record/expected-window.ts";
import { faultFit } from "./record/fault-fit.ts";
import { figureSource } from "./record/figure-source.ts";
import { formulaDimension } from "./record/formula-dimension.ts";
import { formulaName } from "./record/formula-name.ts";
import { formulaPoint } from "./record/formula-point.ts";
import { formulaProperty } from "./record/formula-property.ts";
import { formulaResult } from "./record/formula-result.ts";
import { formulaSyntax } from "./record/formula-syntax.ts";
import { kindFit } from "./record/kind-fit.ts";
import { nameUnique } from "./record/name-unique.ts";
import { plainText } from "./record/plain-text.ts";
import { pointKnown } from "./record/point-known.ts";
import { propertyKnown } from "./record/property-known.ts";
import { propertyPresent } from "./record/property-present.ts";
import { recordFolder } from "./record/record-folder.ts";
import { schemaLink } from "./record/schema-link.ts";
import { sentenceLength } from "./record/sentence-length.ts";
import { settingUnit } from "./record/setting-unit.ts";
import { settingUsed } from "./record/setting-used.ts";
import { thumbExample } from "./record/thumb-example.ts";
import { tubeLimits } from "./record/tube-limits.ts";
import { tubeParameters } from "./record/tube-parameters.ts";
import { tubePins } from "./record/tube-pins.ts";
import { unitSpelling } from "./record/unit-spelling.ts";
import { valuePlausible } from "./record/value-plausible.ts";
import { valueReadable } from "./record/value-readable.ts";
import { valueShape } from "./record/value-shape.ts";
import { valueType } from "./record/value-type.ts";
import { wordingPromise } from "./record/wording-promise.ts";

/** Every rule, by scope and name. */
export const allRules: readonly Rule[] = [
  blankFilled,
  byteOrderMark,
  characterEscape,
  controlCharacter,
  csvRows,
  csvSyntax,
  fileNamePlain,
  filePlace,
  fileSize,
  finalNewline,
  hiddenCharacter,
  jsonSyntax,
  lineEnds,
  lookAlikeLetter,
  nameForbidden,
  nameRepeated,
  nestingAndLength,
  numberSize,
  plainCharacters,
  symbolicLink,
  textEncoding,
  cautionKnown,
  deviceKnown,
  exampleFormula,
  failureNoteKnown,
  idUnique,
  jobReadable,
  roleKnown,
  sourceKnown,
  sourceUsed,
  tableList,
  templateKnown,
  capacitorPolarity,
  capacitorRating,
  expectedFormula,
  expectedReading,
  jobGrade,
  rectifierDirection,
  rectifierRating,
  requirementDecides,
  requirementHolds,
  resistorRating,
  stageSimulates,
  tubeModel,
  tubeRating,
  tubeWired,
  fileName,
  modernValues,
  preferredValues,
  propertyOrder,
  sourceList,
  stageFolder,
  tableCells,
  tableColumns,
  tableDescribed,
  tableKey,
  tableOrder,
  tablePairs,
  tubeFirstName,
  choiceKnown,
  conditionKnown,
  datasetVersion,
  electrodeKnown,
  exampleResult,
  expectedDimension,
  expectedPlace,
  expectedWindow,
  faultFit,
  figureSource,
  formulaDimension,
  formulaName,
  formulaPoint,
  formulaProperty,
  formulaResult,
  formulaSyntax,
  kindFit,
  nameUnique,
  plainText,
  pointKnown,
  propertyKnown,
  propertyPresent,
  recordFolder,
  schemaLink,
  sentenceLength,
  settingUnit,
  settingUsed,
  thumbExample,
  tubeLimits,
  tubeParameters,
  tubePins,
  unitSpelling,
  valuePlausible,
  valueReadable,
  valueShape,
  valueType,
  wordingPromise,
];
