/** Equal minutes in the bare loop where plants are expected to use less on some day of the week than they would. */
import type { BareDays } from './days.ts';

/** `most`: the least if they used all. By Newton's method from above; halved where it leaves what is known. */
export function leastWhenShort(
  most: number,
  depletion: number,
  morning: number,
  latest: number,
  begin: number,
  mask: number,
  aim: number,
  base: number,
  soil: Pick<BareDays, 'etc' | 'raw' | 'taw'>,
  rain: Float64Array,
  netBase: number,
  net: Float64Array,
): number {
  let less = 0;
  let more = most;
  let minutes = most;
  for (let step = 0; step < 100; step++) {
    run(depletion, minutes, morning, latest, begin, mask, base, soil, rain, netBase, net);
    const over = (ends[LEFT] as number) - aim;
    if (over > 0) less = minutes;
    else more = minutes;
    let next = Math.max(0, minutes + over / (ends[GAIN] as number));
    if (Math.abs(next - minutes) <= 1e-12 * minutes) return minutes;
    if (!(next >= less && next < more)) next = (less + more) / 2;
    minutes = next;
  }
  return more;
}

/** What is missing at the end, and what a minute more takes off it. */
const LEFT = 0;
const GAIN = 1;
const ends = new Float64Array(2);

function run(
  depletion: number,
  minutes: number,
  morning: number,
  latest: number,
  begin: number,
  mask: number,
  base: number,
  soil: Pick<BareDays, 'etc' | 'raw' | 'taw'>,
  rain: Float64Array,
  netBase: number,
  net: Float64Array,
): void {
  const { etc, raw, taw } = soil;
  let left = depletion;
  let gain = 0;
  for (let day = morning; day <= latest; day++) {
    const brings = ((mask >> (day - begin)) & 1) * (net[netBase + day] as number);
    const need = etc[base + day] as number;
    const allowed = raw[base + day] as number;
    const all = taw[base + day] as number;
    if (left < 0) {
      left = 0;
      gain = 0;
    }
    left -= (rain[base + day] as number) + minutes * brings;
    gain += brings;
    const there = all - left;
    if (left <= allowed && need <= there) left += need;
    else {
      const keeps = left > allowed ? Math.max(0, 1 - need / (all - allowed)) : 0;
      left = all - keeps * there;
      gain *= keeps;
    }
  }
  ends[LEFT] = left;
  ends[GAIN] = gain;
}
