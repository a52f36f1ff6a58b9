import { type AbuseCase, edited } from "../case.ts";

/** Sound JSON that is no sound job. */
export const SHAPE_CASES: readonly AbuseCase[] = [
  { name: "misspelt property is told once", job: edited(['"title": "test', '«property-unknown: no property "tittle"»"tittle": "test']) },
  { name: "an empty object", job: '«property-missing: "format"»«property-missing: "title"»«property-missing: "chassis"»{}' },
  {
    name: "missing property of a thing with a name",
    job: edited([
      '{ "line": { "designVolts": "117 V", "hertz": 60 } }',
      '{ «property-missing: has no "hertz"»"line": { "designVolts": "117 V" } }',
    ]),
  },
  {
    name: "missing property of a thing in a list",
    job: edited(['{ "name": "R9", "kind": "resistor",', '«property-missing: part "R9" has no "kind"»{ "name": "R9",']),
  },
  { name: "format of the future", job: edited(['"format": 1', '"format": «format-unknown»2']) },
  { name: "choice misspelt", job: edited(['"kind": "resistor"', '"kind": «choice-unknown: "kind" of part "R9"»"resister"']) },
  { name: "choice in capitals", job: edited(['"kind": "resistor"', '"kind": «choice-unknown»"Resistor"']) },
  { name: "trade word for a quantity", job: edited(['"quantity": "dc-volts"', '"quantity": «choice-unknown»"VDC"']) },
  { name: "number as text", job: edited(['"hertz": 60', '"hertz": «choice-unknown»"60"']) },
  { name: "text where a list belongs", job: edited(['["B+", "screen bus"]', '«type-wrong: is a text»"B+ to screen bus"']) },
  { name: "one point only", job: edited(['"between": ["B+", "screen bus"]', '"between": «list-length: too few»["B+"]']) },
  {
    name: "three points",
    job: edited(['"between": ["B+", "screen bus"]', '"between": «list-length: too many»["B+", "screen bus", "chassis"]']),
  },
  {
    name: "union: null fits no branch",
    job: edited(['"22 uF 450 V"', '«type-wrong: "fitted" of part "reservoir" of stage "supply" is null»null']),
  },
  {
    name: "union: misspelt property in the chosen branch",
    job: edited(['"22 uF 450 V"', '{ «property-unknown: no property "planed"»"planed": true, "marked": "22 uF" }']),
  },
  {
    name: "union: text where a part belongs",
    job: edited(
      ['{ "name": "V1", "type": "6J5" }', '«type-wrong: part "tube" of stage "audio" is a text»"6J5"'],
      ['"tubes": ["V1"], ', ""],
    ),
  },
  { name: "union: tubes by a word", job: edited(['"tubes": ["V1"]', '"tubes": «choice-unknown»"rectifers"']) },
  { name: "union: tubes by a number", job: edited(['"tubes": ["V1"]', '"tubes": «type-wrong: is a number»1']) },
  { name: "union: tubes with a number in the list", job: edited(['"tubes": ["V1"]', '"tubes": ["V1", «type-wrong»5]']) },
  {
    name: "id in capitals",
    job: edited(['"id": "supply"', '"id": «name-malformed»"Supply"'], ['"at": "supply:mid"', '"at": "Supply:mid"']),
  },
  {
    name: "condition with a space in its name",
    job: edited(
      ['"receive": {', '«name-malformed: "receive loud"»"receive loud": {'],
      ['"condition": "receive"', '"condition": "operating"'],
    ),
  },
  { name: "bar in a point", job: edited(['["B+", "screen bus"]', '["B+", «name-malformed»"screen|bus"]']) },
  { name: "empty name", job: edited(['"name": "R9"', '"name": «text-empty»""']) },
  { name: "name of 41 characters", job: edited(['"name": "R9"', `"name": «text-too-long»"${"R".repeat(41)}"`]) },
  { name: "year of the crusades", job: edited(['"chassis": {', '"chassis": { "era": «number-out-of-range»1096,']) },
  { name: "year with a fraction", job: edited(['"chassis": {', '"chassis": { "era": «type-wrong: a number»1936.5,']) },
  {
    name: "winding without a marking",
    job: edited([
      '"parts": [\n',
      '"parts": [\n    { "name": "T1", "kind": "transformer", "windings": { «property-missing: winding "heater" of part "T1" has no "marked"»"heater": { "between": ["B+", "chassis"] } } },\n',
    ]),
  },
  {
    name: "pins with nothing in them",
    job: edited(['"parts": [\n', '"parts": [\n    { "name": "V2", "kind": "tube", "pins": «object-empty»{} },\n']),
  },
  {
    name: "five faults in five places",
    job: edited(
      ['"format": 1', '"format": «format-unknown»2'],
      ['"hertz": 60', '"hertz": «choice-unknown»59'],
      ['"name": "V1", "type"', '"name": "V1", «property-unknown»"typ"'],
      ['"between": ["B+", "screen bus"]', '"between": ["B+", «type-wrong»5]'],
      ['"value": "285 V"', '"value": «type-wrong»true'],
    ),
  },
];
