import type { BareZones } from './garden.ts';

/** Minutes of the run nearest to what is wanted, or of the nearest that is not less. */
export function nearest(zones: BareZones, zone: number, wanted: number, isAtLeast: boolean): number {
  const step = zones.step[zone] as number;
  if (isAtLeast ? wanted === 0 : wanted < step / 2 - 1e-9) return 0;
  const mostSteps = Math.max(1, Math.floor((zones.longest[zone] as number) / step + 1e-9));
  const starts = zones.starts[zone] as number;
  let best = 0;
  for (let cycles = 1; cycles <= starts; cycles++) {
    const part = cycles * step;
    const most = Math.max(1, Math.min(mostSteps, Math.floor(1440 / part + 1e-9)));
    const whole = isAtLeast ? Math.ceil(wanted / part - 1e-9) : Math.floor(wanted / part + 0.5 + 1e-9);
    const run = part * Math.min(Math.max(1, whole), most);
    if (best === 0 || isNearer(run, best, wanted, isAtLeast)) best = run;
  }
  return best;
}

function isNearer(run: number, best: number, wanted: number, isAtLeast: boolean): boolean {
  if (isAtLeast) {
    const reaches = run >= wanted - 1e-9;
    if (reaches !== best >= wanted - 1e-9) return reaches;
    if (!reaches) return run > best + 1e-9;
  }
  return Math.abs(run - wanted) < Math.abs(best - wanted) - 1e-9;
}
