import { acrossLine } from "./roles/acrossLine.ts";
import { bias } from "./roles/bias.ts";
import { buffer } from "./roles/buffer.ts";
import { bypass } from "./roles/bypass.ts";
import { cathodeBypass } from "./roles/cathodeBypass.ts";
import { control } from "./roles/control.ts";
import { coupling } from "./roles/coupling.ts";
import { filter } from "./roles/filter.ts";
import { general } from "./roles/general.ts";
import { isolation } from "./roles/isolation.ts";
import { lineToChassis } from "./roles/lineToChassis.ts";
import { reservoir } from "./roles/reservoir.ts";
import { surge } from "./roles/surge.ts";
import { timing } from "./roles/timing.ts";
import { tuned } from "./roles/tuned.ts";
import type { Role } from "./substitution.ts";

/** Every place a part can be substituted in, capacitors first. */
export const roles: readonly Role[] = [
  reservoir,
  filter,
  bypass,
  coupling,
  cathodeBypass,
  timing,
  tuned,
  acrossLine,
  lineToChassis,
  buffer,
  general,
  bias,
  isolation,
  surge,
  control,
];
