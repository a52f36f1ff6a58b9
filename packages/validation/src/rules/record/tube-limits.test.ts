import { testRule } from "../../testing/ruleCase.ts";
import { AT } from "../../testing/soundFiles.ts";
import { tubeLimits } from "./tube-limits.ts";

const limits = (more: string) => ['"system": "unknown", ', `"system": "unknown", ${more}, `] as const;
const typical = (point: string) => ['"typical": []', `"typical": [{ "service": "class A", ${point}, "source": "from-memory" }]`] as const;

testRule(tubeLimits, {
  fires: [
    { name: "milliamperes for the heater", file: AT.tube, change: [['"amps": 0.6', '"amps": «60»']], says: "378 W" },
    {
      name: "more plate voltage than the limit",
      file: AT.tube,
      change: [limits('"plateVolts": 30'), typical('"plateVolts": «250», "plateAmps": 0.01')],
      says: "plateVolts",
    },
    {
      name: "more dissipation than the limit",
      file: AT.tube,
      change: [limits('"plateWatts": 2'), typical('"plateVolts": 250, "plateAmps": «0.01»')],
      says: "plateWatts",
    },
    {
      name: "more current than a cathode gives",
      file: AT.tube,
      change: [limits('"cathodeAmps": 0.011'), typical('"plateVolts": 250, "plateAmps": «0.01», "screenAmps": 0.002')],
    },
    {
      name: "a grid that lost its minus",
      file: AT.tube,
      change: [typical('"plateVolts": 250, "gridVolts": «12.5», "plateAmps": 0.01')],
    },
    {
      name: "a plate resistance in kilohms",
      file: AT.tube,
      change: [typical('"plateVolts": 250, "plateAmps": 0.001, "mu": «100», "plateOhms": 62.5, "siemens": 0.0016')],
    },
    {
      name: "a direct current above its peak",
      file: AT.tube,
      change: [limits('"peakAmps": 0.06'), ['"dcAmps": 0.07', '"dcAmps": «0.07»']],
    },
  ],
  passes: [
    {
      name: "a limit to the last digit",
      file: AT.tube,
      change: [limits('"plateWatts": 2.5'), typical('"plateVolts": 250, "plateAmps": 0.01')],
    },
    {
      name: "class C, whose plate takes a part of the power",
      file: AT.tube,
      change: [
        limits('"plateWatts": 2'),
        ['"typical": []', '"typical": [{ "service": "class C", "plateVolts": 250, "plateAmps": 0.01, "source": "from-memory" }]'],
      ],
    },
    {
      name: "figures of a sheet, rounded each",
      file: AT.tube,
      change: [typical('"plateVolts": 250, "gridVolts": -2, "plateAmps": 0.0012, "mu": 100, "plateOhms": 66000, "siemens": 0.0016')],
    },
    { name: "a drop at the peak", file: AT.tube, change: [limits('"peakAmps": 0.21'), typical('"dropVolts": 22, "dropAmps": 0.21')] },
  ],
});
