import { loadDataset } from "@underchassis/dataset/load";
import { CaseMaker } from "../tests/suspects/cases/caseMaker.ts";

const ds = loadDataset();
const cpu = () => {
  const u = process.cpuUsage();
  return (u.user + u.system) / 1e6;
};
const go = async (id: string, faults: any[][], points: string[]) => {
  const m = new CaseMaker(id, ds);
  await m.nominal();
  for (const f of faults) {
    const t = cpu();
    try {
      const r = await m.readings("x", f);
      console.log(
        id,
        JSON.stringify(f),
        points
          .map((p) => {
            const i = m.points.indexOf(p);
            return `${p} ${r.operating.volts[i]} src ${r.operating.sourceOhms[i]}`;
          })
          .join("; "),
        (cpu() - t).toFixed(2),
        m.disagreements,
      );
    } catch (e) {
      console.log(id, JSON.stringify(f), String(e), (cpu() - t).toFixed(2));
    }
  }
};
await go("doubler-full-wave", [[], [{ kind: "open", part: "T1", lead: "hv" }]], ["middle", "raw"]);
await go("modulator-fixed-bias", [[{ kind: "open", part: "R2" }]], ["bias raw", "V1 grid"]);
await go("regulated-screens", [[{ kind: "open", part: "R5" }]], ["V2 cathode"]);
await go("preamp-12ax7", [[{ kind: "moved-lead", part: "C5", lead: "b", to: "output" }]], ["output", "V1A grid"]);
process.exit(0);
