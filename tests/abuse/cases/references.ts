import { type AbuseCase, edited } from "../case.ts";

/** Jobs of the right shape whose names lead nowhere. */
export const REFERENCE_CASES: readonly AbuseCase[] = [
  { name: "unknown template", job: edited(['"test-supply"', '«template-unknown»"test-suply"']) },
  {
    name: "two stages of one id",
    job: edited(['"id": "audio"', '"id": «stage-duplicate»"supply"'], ['"at": "audio.plateLoad"', '"at": "supply.plateLoad"']),
  },
  {
    name: "unknown role",
    job: edited(['"tube": {', '"tube": { "name": "V1" }, «role-unknown»"plateLod": {']).replace(
      '"name": "V1", "type": "6J5"',
      '"marked": "47k"',
    ),
  },
  { name: "unknown terminal, told once", job: edited(['"plate": "V1 plate"', '«terminal-unknown»"plat": "V1 plate"']) },
  {
    name: "unbound terminal",
    job: edited(
      ['"b-plus": "B+", "plate": "V1 plate"', '"b-plus": "B+"'],
      ['"bind": { "b-plus": "B+" }', '«terminal-unbound: "plate" of stage "audio"»"bind": { "b-plus": "B+" }'],
    ),
  },
  {
    name: "no binds at all",
    job: edited(
      ['"bind": { "b-plus": "B+", "plate": "V1 plate" },\n      ', ""],
      ['{\n      "id": "audio"', '«terminal-unbound: "b-plus"»«terminal-unbound: "plate"»{\n      "id": "audio"'],
    ),
  },
  { name: "unknown condition of a reading", job: edited(['"condition": "receive"', '"condition": «condition-unknown»"recieve"']) },
  { name: "unknown condition of a switch", job: edited(['"standby": "open"', '«condition-unknown»"stanby": "open"']) },
  { name: "unknown condition of a load", job: edited(['"marked": "20 mA"', '"presentIn": ["receive", «condition-unknown»"transmit"]']) },
  { name: "unknown tube in a condition", job: edited(['"tubes": ["V1"]', '"tubes": ["V1", «part-unknown: no tube»"V2"]']) },
  { name: "a resistor among the tubes", job: edited(['"tubes": ["V1"]', '"tubes": [«part-unknown: "R9" is a resistor, not a tube»"R9"]']) },
  { name: "envelope of two sections", job: edited(['"name": "V1", "type"', '"name": "V1A", "type"']) },
  { name: "unknown switch in a condition", job: edited(['"switches": { "S1"', '"switches": { «part-unknown: no switch»"S2"']) },
  { name: "unknown load in a condition", job: edited(['"loads": { "L1"', '"loads": { «part-unknown: no load»"L2"']) },
  {
    name: "unknown meter of a reading",
    job: edited(['"value": "285 V", "meter": "bench"', '"value": "285 V", "meter": «meter-unknown»"bensh"']),
  },
  { name: "unknown meter of a measurement", job: edited(['"17 uF", "meter": "bench"', '"17 uF", "meter": «meter-unknown»"bridge"']) },
  { name: "unknown point of a reading", job: edited(['"at": "B+", "quantity"', '"at": «point-unknown»"B++", "quantity"']) },
  {
    name: "unknown second point of a reading",
    job: edited(['"at": "B+", "quantity"', '"at": "B+", "to": «point-unknown»"screen buss", "quantity"']),
  },
  {
    name: "inner point that is bound",
    job: edited(
      [
        '"b-plus": "B+" },\n      "parts": {\n        "reservoir"',
        '"b-plus": "B+", "mid": "choke tap" },\n      "parts": {\n        "reservoir"',
      ],
      ['"at": "supply:mid"', '"at": «point-unknown: a name of its own»"supply:mid"'],
    ),
  },
  { name: "part where a point belongs", job: edited(['"at": "supply:mid"', '"at": «point-unknown: is a part, not a point»"R9"']) },
  { name: "current at a point", job: edited(['"at": "audio.plateLoad"', '"at": «part-unknown: is a point; a current»"B+"']) },
  {
    name: "current in a part that does not exist",
    job: edited(['"at": "audio.plateLoad"', '"at": «part-unknown: no part»"audio.plateLod"']),
  },
  {
    name: "reading between a point and itself",
    job: edited(['"at": "B+", "quantity"', '"at": "B+", "to": «reading-one-point»"B+", "quantity"']),
  },
  { name: "reading of the reference", job: edited(['"at": "B+", "quantity"', '"at": «reading-one-point»"chassis", "quantity"']) },
  {
    name: "two parts of one name",
    job: edited(
      ['"name": "L1", "kind"', '"name": «part-duplicate: two parts»"R9", "kind"'],
      ['"loads": { "L1"', '"loads": { «part-unknown»"L1"'],
    ),
  },
  { name: "part that fills a role already", job: edited(['"name": "R9"', '"name": «part-duplicate: already fills the role "tube"»"V1"']) },
  {
    name: "two-lead part that lies nowhere",
    job: edited([
      '{ "name": "R9", "kind": "resistor", "marked": "yellow violet orange silver", "between": ["screen bus", "chassis"] }',
      '«leads-missing: part "R9" (resistor) lies nowhere»{ "name": "R9", "kind": "resistor", "marked": "47k" }',
    ]),
  },
  {
    name: "part that lies where it was fitted",
    job: edited([
      '"marked": "yellow violet orange silver", "between": ["screen bus", "chassis"]',
      '"fitted": { "marked": "47k", "between": ["screen bus", "chassis"] }',
    ]),
  },
  { name: "misspelt property is not a missing one", job: edited(['silver", "between"', 'silver", «property-unknown»"betwen"']) },
  {
    name: "both leads on one point",
    job: edited(['["screen bus", "chassis"] },\n    { "name": "L1"', '["screen bus", «leads-shorted»"screen bus"] },\n    { "name": "L1"']),
  },
  {
    name: "both leads on one point as found is a finding, not a fault of the job",
    job: edited(['"name": "R9",', '"name": "R9", "foundBetween": ["chassis", "chassis"],']),
  },
  { name: "two terminals bound to one point", job: edited(['"plate": "V1 plate"', '"plate": «leads-shorted: audio.plateLoad»"B+"']) },
  {
    name: "two terminals bound to one point, the part being absent",
    job: edited(
      ['"plate": "V1 plate" },\n      "parts": {', '"plate": "B+" },\n      "parts": { "plateLoad": { "absent": true },'],
      ['"at": "audio.plateLoad"', '"at": "audio.cathodeResistor"'],
    ),
  },
  {
    name: "unknown winding",
    job: edited([
      '"reservoir": {',
      '"heaterWinding": { "windings": { "heater": {}, «winding-unknown»"heatre": {} } },\n        "reservoir": {',
    ]),
  },
  { name: "unknown pin as found", job: edited(['"type": "6J5"', '"type": "6J5", "foundPins": { «pin-unknown»"anode": "B+" }']) },
  {
    name: "a resistance read with the power on",
    job: edited([
      '"readings": [\n',
      '"readings": [\n    { "at": "B+", "quantity": "ohms", "condition": «reading-ohms-powered»"operating", "value": "5k" },\n    { "at": "B+", "quantity": "ohms", "condition": "cold", "value": "5k" },\n',
    ]),
  },
  {
    name: "unknown pin of an own part, told once",
    job: edited([
      '"parts": [\n',
      '"parts": [\n    { "name": "V2", "kind": "tube", "type": "6J5", "pins": { «pin-unknown»"anode": "B+", "grid": "chassis", "cathode": "chassis" } },\n',
    ]),
  },
  {
    name: "pins between which no current can flow",
    job: edited([
      '"parts": [\n',
      '"parts": [\n    { "name": "V2", "kind": "tube", "type": "6J5", «pins-missing»"pins": { "plate": "B+" } },\n',
    ]),
  },
  {
    name: "a name that differs from another only in capitals is a warning",
    job: edited([
      '"parts": [\n',
      '"parts": [\n    { "name": «part-name-alike»"c1", "kind": "capacitor", "marked": "1 uF", "between": ["B+", "chassis"] },\n',
    ]),
  },
  { name: "unknown stage of a part", job: edited(['"name": "R9",', '"name": "R9", "stage": «stage-unknown»"supply-2",']) },
  {
    name: "point not in the job's list",
    job: edited(
      ['"stages": [', '"points": { "B+": "", "rectifier cathode": "", "V1 plate": "", "screen bus": "" },\n  "stages": ['],
      ['["screen bus", "chassis"]', '[«point-unlisted»"screen buss", "chassis"]'],
    ),
  },
  {
    name: "listed point that nothing touches",
    job: edited([
      '"stages": [',
      '"points": { "B+": "", "rectifier cathode": "", "V1 plate": "", "screen bus": "", «point-idle»"bias": "" },\n  "stages": [',
    ]),
  },
  {
    name: "reading of a listed point that nothing touches",
    job: edited(
      [
        '"stages": [',
        '"points": { "B+": "", "rectifier cathode": "", "V1 plate": "", "screen bus": "", «point-idle»"bias": "" },\n  "stages": [',
      ],
      ['"at": "B+", "quantity"', '"at": «point-unknown: no part touches»"bias", "quantity"'],
    ),
  },
  {
    name: "lonely point with a near name",
    job: edited(['["screen bus", "chassis"] },', '[«point-lonely: there is a "screen bus"»"screen bs", "chassis"] },']),
  },
  { name: "lonely points that differ on purpose", job: edited(['["screen bus", "chassis"] },', '["V2 plate", "chassis"] },']) },
  {
    name: "a point named like a method",
    job: edited(
      ['["screen bus", "chassis"] },', '["toString", "chassis"] },'],
      ['"at": "B+", "quantity"', '"at": «point-unknown»"valueOf", "quantity"'],
    ),
  },
  {
    name: "a meter named like a method",
    job: edited(['"value": "285 V", "meter": "bench"', '"value": "285 V", "meter": «meter-unknown»"valueof"']),
  },
];
