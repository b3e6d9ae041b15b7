/** A year of kept rain where lines wet a part of the ground, in the bare loop. */
import type { BareDays } from './days.ts';
import type { BarePlantings, BareWeather } from './garden.ts';
import { mornings } from './kept-mornings.ts';
import { DRY, drawn, ready, runStores, storesEnd, WETTED } from './stores.ts';

/** What the wetted ground is to give, by day from the morning on. */
const uses = new Float64Array(7);

export function storesYear(
  plantings: BarePlantings,
  planting: number,
  share: number,
  { days, eto, yearRain, yearEtoShare }: BareWeather,
  year: number,
  base: number,
  own: BareDays,
): void {
  const { isMorning, kept, fallen } = mornings;
  const until = plantings.end[planting] as number;
  const establishUntil = plantings.establishUntil[planting] as number;
  const askOn = plantings.refills[planting] === 1 ? fillOn : keepOn;
  let wetted = plantings.start[planting] as number;
  let dry = wetted;
  for (let day = plantings.first[planting] as number; day < until; day++) {
    const etoShare = yearEtoShare[year * days + day] as number;
    const rain = yearRain[year * days + day] as number;
    const soaked = rain === 0 || rain < 0.2 * (eto[day] as number) * etoShare ? 0 : rain;
    const need = (own.etc[base + day] as number) * etoShare;
    const allowed = own.raw[base + day] as number;
    const taw = own.taw[base + day] as number;
    const asked = isMorning[day] === 1 ? askOn(day, share, wetted, dry, establishUntil, base, own) : 0;
    runStores(share, need, allowed, taw, wetted, dry, soaked, asked, day <= establishUntil);
    const wettedEnd = storesEnd[WETTED] as number;
    const dryEnd = storesEnd[DRY] as number;
    wetted = Math.max(0, wettedEnd);
    dry = Math.max(0, dryEnd);
    if (rain === 0) continue;
    fallen[day] = (fallen[day] as number) + rain;
    const stayed = share * Math.max(0, soaked + wettedEnd - wetted) + (1 - share) * (soaked + dryEnd - dry);
    kept[day] = (kept[day] as number) + stayed;
  }
}

/** Depth over the wetted ground that a morning asks for of a planting that is kept moist. */
function keepOn(
  morning: number,
  share: number,
  wetted: number,
  dryThen: number,
  establishUntil: number,
  base: number,
  { etc, raw, target }: BareDays,
): number {
  const { expectedRain, gains, lastOf, nextOf } = mornings;
  const latest = lastOf[morning] as number;
  let dry = dryThen;
  let after = 0;
  let allowed = Number.POSITIVE_INFINITY;
  for (let day = morning; day <= (nextOf[morning] as number); day++) {
    const need = etc[base + day] as number;
    const rain = expectedRain[day] as number;
    const raws = raw[base + day] as number;
    const ofDry = day <= establishUntil ? 0 : Math.min(need, ready(dry - rain, raws));
    dry = Math.max(0, dry + ofDry - rain);
    const use = drawn(share, need, ofDry);
    if (day <= latest) uses[day - morning] = use;
    else {
      allowed = Math.min(allowed, raws - after);
      after += use;
    }
  }
  let missing = -Math.max(0, Math.min(target[base + latest] as number, allowed));
  let most = 0;
  for (let day = latest; day > morning; day--) {
    missing += (uses[day - morning] as number) - (expectedRain[day] as number);
    most = Math.max(most, missing / (gains[day] as number));
  }
  missing += wetted + (uses[0] as number) - (expectedRain[morning] as number);
  return Math.max(most, missing / (gains[morning] as number));
}

/** The same of one that is filled when due. */
function fillOn(
  morning: number,
  share: number,
  wetted: number,
  dryThen: number,
  establishUntil: number,
  base: number,
  { etc, raw }: BareDays,
): number {
  const { expectedRain, nextAfter } = mornings;
  const raws = raw[base + morning] as number;
  if (wetted === 0) return 0;
  let dry = dryThen;
  let sum = 0;
  let allowed = raws;
  for (let day = morning; day <= (nextAfter[morning] as number); day++) {
    const need = etc[base + day] as number;
    const rain = expectedRain[day] as number;
    const ofDry = day <= establishUntil ? 0 : Math.min(need, ready(dry - rain, raw[base + day] as number));
    dry = Math.max(0, dry + ofDry - rain);
    if (day > morning) allowed = Math.min(allowed, (raw[base + day] as number) - sum);
    sum += drawn(share, need, ofDry);
  }
  return wetted > Math.max(0, allowed) + 1e-9 ? wetted : 0;
}
