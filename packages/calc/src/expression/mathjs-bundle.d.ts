// The library in one file: opening its several hundred modules takes ten times as long as running what they hold.
declare module "mathjs/lib/browser/math.js" {
  const math: typeof import("mathjs");
  export default math;
}
