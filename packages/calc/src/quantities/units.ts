import type { Dimension } from "./types.ts";

/** What one spelling of a unit means: value_SI = number * 10^exponent * factor + offset. */
export interface Unit {
  exponent: number;
  factor?: number;
  offset?: number;
  /** A spelling that deserves a word to the reader. */
  note?: string;
  /** Voltage spellings that say which kind. */
  volts?: "ac" | "dc";
}

/** Spellings, blank separated, without spaces or dots inside; then what they mean. Old spellings: reference section 1.4 (S58, from-memory). */
type Row = readonly [spellings: string, unit: Unit];

const plain = (spellings: string, exponent: number): Row => [spellings, { exponent }];

const rows: Readonly<Record<Dimension, readonly Row[]>> = {
  resistance: [
    plain("ohm ohms \u03a9 R", 0),
    plain("k K kohm kohms k\u03a9 K\u03a9 Kohm Kohms kilohm kilohms kiloohm kiloohms", 3),
    plain("M Mohm Mohms MOHM MOHMS M\u03a9 meg megs Mega megohm megohms megaohm megaohms", 6),
    plain("G Gohm Gohms G\u03a9 gigohm gigaohm", 9),
    plain("T Tohm T\u03a9 teraohm", 12),
    plain("m\u03a9 milliohm milliohms", -3),
    ["mohm mohms", { exponent: -3, note: "mohm with a small m read as milliohm; a megohm is written Mohm" }],
    plain("uohm uohms u\u03a9 microhm microhms", -6),
  ],
  capacitance: [
    plain("F farad farads", 0),
    ["mfd mfds mf MF MFD Mfd Mf mF", { exponent: -6, note: "mfd and mf read as microfarad, as on old US drawings" }],
    plain("u uF uf UF ufd uFd UFD microfarad microfarads", -6),
    plain("n nF nf NF nfd nanofarad nanofarads kpF", -9),
    plain("p pF pf PF pfd picofarad picofarads", -12),
    [
      "mmf mmfd mmfds MMF MMFD uuf uuF UUF uufd uuFd micromicrofarad micromicrofarads",
      { exponent: -12, note: "mmf read as micromicrofarad, that is picofarad" },
    ],
    ["cm", { exponent: -12, factor: 1.1126, note: "cm read as centimetre of the electrostatic system, 1.1126 pF" }],
    ["jar jars", { exponent: -9, factor: 10 / 9, note: "jar read as 1/900 uF" }],
  ],
  inductance: [
    plain("H hy hys henry henries henrys Hy", 0),
    plain("mH mh mhy mhys millihenry millihenries millihenrys", -3),
    ["MH MHY", { exponent: -3, note: "MH read as millihenry" }],
    plain("uH uh uhy microhenry microhenries microhenrys", -6),
    plain("nH nh nanohenry", -9),
  ],
  voltage: [
    plain("V v volt volts", 0),
    ["Vdc VDC vdc V= DCV dcv DCVolts voltsdc voltDC", { exponent: 0, volts: "dc" }],
    ["WVDC WV VDCW DCWV VW WVolts workingvolts", { exponent: 0, volts: "dc" }],
    ["~ Vac VAC vac V~ ACV acv voltsac voltAC Vrms VRMS VACrms V~rms", { exponent: 0, volts: "ac" }],
    plain("kV KV kv kilovolt kilovolts", 3),
    ["kVdc kVDC KVDC", { exponent: 3, volts: "dc" }],
    ["kVac kVAC KVAC", { exponent: 3, volts: "ac" }],
    plain("mV mv millivolt millivolts", -3),
    plain("uV uv microvolt microvolts", -6),
  ],
  current: [
    plain("A a amp amps ampere amperes", 0),
    plain("mA ma milliamp milliamps milliampere milliamperes mAdc mADC", -3),
    ["MA mil mils", { exponent: -3, note: "MA and mils read as milliampere" }],
    plain("uA ua microamp microamps microampere microamperes", -6),
    plain("nA na nanoamp nanoamps", -9),
    plain("pA picoamp", -12),
    plain("kA kiloamp kiloamps", 3),
  ],
  power: [
    plain("W w watt watts Watt Watts", 0),
    plain("mW mw milliwatt milliwatts", -3),
    plain("uW microwatt microwatts", -6),
    plain("kW KW kw kilowatt kilowatts", 3),
    ["VA volt-amperes voltamperes", { exponent: 0, note: "VA taken as watts" }],
  ],
  energy: [
    plain("J joule joules Ws watt-second watt-seconds wattseconds", 0),
    plain("mJ millijoule millijoules", -3),
    plain("uJ microjoule", -6),
    plain("kJ kilojoule", 3),
  ],
  frequency: [
    plain("Hz hz HZ hertz cps c/s c ~ cycle cycles cy", 0),
    plain("k kc Kc KC kcs kc/s Kc/s KC/S kHz KHz khz kilocycle kilocycles kilohertz", 3),
    plain("M mc Mc MC mcs mc/s Mc/s MC/S MHz megacycle megacycles megahertz", 6),
    ["mHz mhz", { exponent: 6, note: "mHz read as megahertz" }],
    plain("GHz ghz Gc kmc gigahertz", 9),
  ],
  time: [
    plain("s sec secs second seconds", 0),
    plain("ms msec millisecond milliseconds", -3),
    plain("us usec microsecond microseconds", -6),
    plain("ns nsec nanosecond nanoseconds", -9),
    ["min mins minute minutes", { exponent: 0, factor: 60 }],
    ["h hr hrs hour hours", { exponent: 0, factor: 3600 }],
  ],
  temperature: [
    plain("K kelvin kelvins", 0),
    ["C \u00b0C degC degreesC celsius", { exponent: 0, offset: 273.15 }],
    ["F \u00b0F degF degreesF fahrenheit", { exponent: 0, factor: 5 / 9, offset: 273.15 - 160 / 9 }],
  ],
  conductance: [
    plain("S siemens mho mhos \u2127", 0),
    plain("mS mmho mmhos millimho millimhos millisiemens mA/V ma/v", -3),
    plain("uS umho umhos micromho micromhos microsiemens uA/V", -6),
  ],
  charge: [
    plain("C coulomb coulombs As", 0),
    plain("mC millicoulomb", -3),
    plain("uC microcoulomb microcoulombs", -6),
    plain("nC nanocoulomb", -9),
  ],
  length: [
    plain("m metre metres meter meters", 0),
    plain("mm millimetre millimetres millimeter millimeters", -3),
    plain("cm centimetre centimetres centimeter centimeters", -2),
    plain("um micrometre micrometer", -6),
    ['in inch inches "', { exponent: 0, factor: 0.0254 }],
    ["ft foot feet", { exponent: 0, factor: 0.3048 }],
    ["mil mils", { exponent: -6, factor: 25.4 }],
  ],
  ratio: [plain("% percent", -2), plain("ppm", -6), plain("x", 0)],
};

interface Index {
  exact: ReadonlyMap<string, Unit>;
  /** Any capitalisation, where that leaves one meaning only. */
  folded: ReadonlyMap<string, Unit>;
}

function sameMeaning(one: Unit, other: Unit): boolean {
  return one.exponent === other.exponent && one.factor === other.factor && one.offset === other.offset;
}

function indexOf(list: readonly Row[], never: ReadonlySet<string> = new Set()): Index {
  const exact = new Map<string, Unit>();
  const folded = new Map<string, Unit | null>();
  for (const [spellings, unit] of list) {
    for (const spelling of spellings.split(" ")) {
      exact.set(spelling, unit);
      const key = spelling.toLowerCase();
      if (never.has(key)) continue;
      const other = folded.get(key);
      folded.set(key, other === undefined ? unit : other && sameMeaning(other, unit) ? other : null);
    }
  }
  return { exact, folded: new Map([...folded].filter((entry): entry is [string, Unit] => entry[1] !== null)) };
}

const indices = new Map<Dimension, Index>();
for (const [dimension, list] of Object.entries(rows)) indices.set(dimension as Dimension, indexOf(list));

/** A lone small m is milli to one reader and Meg to another, nine powers of ten apart: never guessed. */
indices.set("resistance", indexOf(rows.resistance, new Set(["m"])));

/** Every dimension the units know. */
export const dimensions = Object.keys(rows) as readonly Dimension[];

/**
 * The unit of a dimension written as `text`, blanks and dots ignored ("W.V.D.C.", "K ohm"); undefined when the dimension
 * has no such unit. Capitals matter only where they change the meaning (mohm, Mohm).
 */
export function findUnit(text: string, dimension: Dimension): Unit | undefined {
  const key = text.replace(/[\s.]/g, "");
  const index = indices.get(dimension);
  return index?.exact.get(key) ?? index?.folded.get(key.toLowerCase());
}

/** Spellings of a dimension's units in the order a reader would think of them, for suggestions. */
export function spellingsOf(dimension: Dimension): readonly string[] {
  return rows[dimension].flatMap(([spellings]) => spellings.split(" "));
}
