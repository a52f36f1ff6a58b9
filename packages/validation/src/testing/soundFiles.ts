/** A small datasets folder in which nothing is wrong, as text: tests change one thing of it. */
const stage = `{
  "$schema": "../../../schemas/stage.schema.json",
  "schemaVersion": 1,
  "id": "small-supply",
  "title": "Small supply",
  "family": "supply",
  "summary": "One rectifier, a reservoir and a bleeder, for tests of the rules.",
  "terminals": [
    { "id": "hv", "meaning": "Winding, live end." },
    { "id": "return", "meaning": "Negative return.", "default": "chassis" },
    { "id": "b-plus", "meaning": "Filtered B+." }
  ],
  "points": { "input": "Reservoir capacitor, positive side." },
  "parts": [
    {
      "role": "rectifier",
      "title": "Rectifier",
      "kind": "rectifier",
      "between": ["hv", "input"],
      "type": "1N4007",
      "source": "common-practice"
    },
    {
      "role": "reservoir",
      "title": "Reservoir capacitor",
      "kind": "capacitor",
      "between": ["input", "return"],
      "typical": "40 uF 250 V",
      "polarised": true,
      "source": "common-practice"
    },
    {
      "role": "filterResistor",
      "title": "Filter resistor",
      "kind": "resistor",
      "between": ["input", "b-plus"],
      "typical": "1 kohm 2 W",
      "source": "common-practice"
    },
    {
      "role": "outputCapacitor",
      "title": "Output capacitor",
      "kind": "capacitor",
      "between": ["b-plus", "return"],
      "typical": "40 uF 250 V",
      "polarised": true,
      "source": "common-practice"
    },
    {
      "role": "bleeder",
      "title": "Bleeder",
      "kind": "resistor",
      "between": ["b-plus", "return"],
      "typical": "100 kohm 1 W",
      "optional": true,
      "source": "common-practice"
    }
  ],
  "typical": {
    "parts": [
      { "kind": "ac-source", "between": ["source-a", "return"], "value": "125 V" },
      { "kind": "resistor", "between": ["source-a", "hv"], "value": "60 ohm" },
      { "kind": "load", "between": ["b-plus", "return"], "value": "20 mA" }
    ],
    "line": { "designVolts": "117 V", "hertz": 60 }
  },
  "expected": [
    {
      "title": "B+",
      "at": "b-plus",
      "to": "return",
      "quantity": "dc-volts",
      "condition": "operating",
      "formula": "volts(\\"input\\") - filterResistor.meanAmps * filterResistor.ohms",
      "low": 125,
      "high": 153,
      "source": "common-practice"
    }
  ],
  "requirements": [
    {
      "id": "hum",
      "title": "Ripple of B+ at most 1 % of it",
      "formula": "ripple(\\"b-plus\\") <= 0.01 * volts(\\"b-plus\\")",
      "condition": "operating",
      "otherwise": "Hum.",
      "severity": "watch",
      "source": "common-practice"
    },
    {
      "id": "reservoir-rating",
      "title": "The reservoir bears its voltage",
      "formula": "reservoir.ratedVolts >= reservoir.maxVolts",
      "otherwise": "It fails.",
      "severity": "replace",
      "source": "from-memory"
    }
  ],
  "failureNotes": ["filter-dry"],
  "cautions": ["stored-charge"],
  "sources": ["common-practice"]
}
`;

const tube = `{
  "$schema": "../../schemas/tube.schema.json",
  "schemaVersion": 1,
  "id": "6x4",
  "names": ["6X4", "EZ90"],
  "title": "Full-wave vacuum rectifier",
  "class": "rectifier",
  "heater": { "volts": 6.3, "amps": 0.6, "heating": "indirect", "source": "from-memory" },
  "limits": { "system": "unknown", "peakInverseVolts": 1250, "dcAmps": 0.07, "source": "from-memory" },
  "units": [{ "kind": "vacuum-diode", "count": 2, "parameters": { "perveance": 0.0006784 }, "source": "from-memory" }],
  "typical": []
}
`;

const caution = `{
  "$schema": "../../schemas/caution.schema.json",
  "schemaVersion": 1,
  "id": "stored-charge",
  "title": "Stored charge",
  "text": "Filter capacitors hold their charge. Measure before touching.",
  "rank": 1,
  "sources": ["common-practice"]
}
`;

const failureNote = `{
  "$schema": "../../schemas/failure-note.schema.json",
  "schemaVersion": 1,
  "id": "filter-dry",
  "title": "Dried-out filter capacitor",
  "partKind": "capacitor",
  "roles": ["reservoir"],
  "era": { "from": 1930, "to": 1980 },
  "mechanism": "The electrolyte dries out.",
  "symptom": { "text": "Hum.", "quantity": "ripple-volts", "direction": "high" },
  "measurement": { "text": "Capacitance out of circuit.", "quantity": "capacitance", "limit": "below 80 %" },
  "cure": "A new capacitor of the same value.",
  "sources": ["common-practice"]
}
`;

const thumb = `{
  "$schema": "../../schemas/rule-of-thumb.schema.json",
  "schemaVersion": 1,
  "id": "bleeder-current",
  "title": "Bleeder current",
  "statement": "A bleeder takes a tenth of the load current.",
  "formula": {
    "expression": "0.1 * loadAmps",
    "gives": "bleeder current",
    "unit": "A",
    "where": { "loadAmps": "load current, A" },
    "example": { "values": { "loadAmps": 0.1 }, "result": 0.01 }
  },
  "figures": [{ "what": "share of the load current", "low": 0.05, "high": 0.15, "unit": "ratio", "source": "from-memory" }],
  "appliesTo": { "roles": ["bleeder"] },
  "limits": "Where nothing else holds the output down.",
  "sources": ["from-memory"]
}
`;

const examples = `{
  "$schema": "../../schemas/worked-example.schema.json",
  "schemaVersion": 1,
  "id": "ripple",
  "title": "Ripple",
  "examples": [
    {
      "id": "ripple-frequency-1",
      "title": "Full-wave ripple frequency",
      "formula": "parallel-resistance",
      "source": { "work": "Own working", "place": "here", "status": "derived" },
      "inputs": { "ohms": ["100 ohm", "100 ohm"] },
      "output": "totalOhms",
      "result": "50",
      "unit": "ohm",
      "tolerance": { "absolute": 0.5, "why": "half a unit" }
    }
  ]
}
`;

const tables = `{
  "$schema": "../../schemas/table.schema.json",
  "lists": { "colours": ["black", "brown", "red"] },
  "tables": [
    {
      "file": "bands.csv",
      "title": "Colours of bands",
      "key": ["colour"],
      "columns": [
        { "name": "colour", "type": "choice", "meaning": "colour of the band", "among": "colours" },
        { "name": "figure", "type": "number", "meaning": "figure that it stands for" },
        { "name": "note", "type": "text", "meaning": "remark", "optional": true },
        { "name": "source", "type": "source", "meaning": "where the row comes from" }
      ]
    },
    {
      "file": "diodes.csv",
      "title": "Diodes",
      "key": ["class"],
      "columns": [
        { "name": "class", "type": "text", "meaning": "type or class" },
        { "name": "pivVolts", "type": "integer", "meaning": "peak inverse voltage", "unit": "V" },
        { "name": "averageAmps", "type": "number", "meaning": "average current", "unit": "A" },
        { "name": "source", "type": "source", "meaning": "where the row comes from" }
      ]
    }
  ]
}
`;

export const SOUND_FILES = {
  "datasets/cautions/stored-charge.json": caution,
  "datasets/failure-notes/filter-dry.json": failureNote,
  "datasets/manifest.json": '{\n  "datasetVersion": "0.1.0",\n  "schemaVersions": { "stage": 1, "tube": 1 }\n}\n',
  "datasets/rules-of-thumb/bleeder-current.json": thumb,
  "datasets/sources.csv":
    "id,kind,title,detail\ncommon-practice,common-practice,Practice of the trade,\nfrom-memory,from-memory,Recalled,\n",
  "datasets/stages/supply/small-supply.json": stage,
  "datasets/tables/bands.csv": "colour,figure,note,source\nblack,0,,from-memory\nbrown,1,,from-memory\nred,2,,from-memory\n",
  "datasets/tables/diodes.csv": "class,pivVolts,averageAmps,source\n1N4004,400,1,from-memory\n1N4007,1000,1,from-memory\n",
  "datasets/tables/tables.json": tables,
  "datasets/tubes/6x4.json": tube,
  "datasets/worked-examples/ripple.json": examples,
} as const;

/** Where the files of each kind lie. */
export const AT = {
  caution: "datasets/cautions/stored-charge.json",
  note: "datasets/failure-notes/filter-dry.json",
  manifest: "datasets/manifest.json",
  thumb: "datasets/rules-of-thumb/bleeder-current.json",
  sources: "datasets/sources.csv",
  stage: "datasets/stages/supply/small-supply.json",
  bands: "datasets/tables/bands.csv",
  diodes: "datasets/tables/diodes.csv",
  tables: "datasets/tables/tables.json",
  tube: "datasets/tubes/6x4.json",
  examples: "datasets/worked-examples/ripple.json",
} as const satisfies Record<string, keyof typeof SOUND_FILES>;
