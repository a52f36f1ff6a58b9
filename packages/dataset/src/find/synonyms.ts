/**
 * What the trade calls by several names of more than one word, as one term: patterns of lower-case text, longer ones before what they
 * contain. common-practice.
 */
export const PHRASES: readonly (readonly [string, string])[] = [
  ["b ?\\+|b[ -]?plus|high[ -]tension|h\\.?t\\.?|plate supply", "bplus"],
  ["b[ -]?minus", "bminus"],
  ["tuning[ -](?:indicators?|eyes?)|(?:magic|cathode-ray) eyes?|electron-ray", "tuningeye"],
  ["output transformers?", "outputtransformer output transformer"],
  ["(?:power|mains) transformers?", "powertransformer power transformer"],
  ["volume controls?", "volume potentiometer"],
  ["line[ -]cords?|mains leads?|power cords?", "line cord"],
  ["[uµμ]{2}fd?", "picofarad"],
  ["line voltage", "line voltage"],
  ["automatic (?:volume|gain) control", "avc"],
  ["beat[ -](?:frequency )?oscillators?", "bfo"],
  ["variable[ -](?:frequency )?oscillators?", "vfo variable oscillator"],
  ["intermediate[ -]frequency", "intermediate"],
  ["i\\.?f\\.?(?= (?:stage|can|coil|amplifier|transformer))", "intermediate"],
  ["ac[/-]dc|(?:live|hot) chassis", "transformerless"],
  ["(?:first|input) filters?", "reservoir filter"],
  ["putt-putt|motor-boat(?:s|ing)?", "motorboat"],
  ["(?:vacuum-tube|valve) voltmeters?", "vtvm voltmeter"],
];

const SAME: Readonly<Record<string, string>> = {
  tuningeye: "eye eyes",
  outputtransformer: "opt",
  potentiometer: "potentiometers pot pots control controls",
  cord: "cords flex",
  capacitor: "capacitors cap caps condenser condensers",
  microfarad: "microfarads mfd mf uf ufd µf μf",
  picofarad: "picofarads mmf mmfd pf",
  tube: "tubes valve valves",
  line: "lines mains",
  plate: "plates anode anodes",
  heater: "heaters filament filaments",
  ground: "grounds grounded grounding earth earthed earthing",
  hum: "hums humming ripple buzz buzzes buzzing",
  loudspeaker: "loudspeakers speaker speakers",
  crystal: "crystals xtal xtals",
  avc: "agc",
  transformerless: "",
  choke: "chokes inductor inductors",
  filter: "filters filtering filtered smoothing",
  "reservoir filter": "reservoir reservoirs",
  motorboat: "motorboating motorboats",
  oscilloscope: "oscilloscopes scope scopes",
  "vtvm voltmeter": "vtvm",
  short: "shorts shorted shorting",
  leak: "leaks leaky leaking leakage leaked",
  drift: "drifts drifted drifting",
};

/** What the trade calls by several words, each with the term that stands for it; the term itself among them. common-practice. */
export const WORDS: ReadonlyMap<string, string> = new Map(
  Object.entries(SAME).flatMap(([term, words]) =>
    [...(term.includes(" ") ? [] : [term]), ...words.split(" ").filter(Boolean)].map((word) => [word, term] as const),
  ),
);
