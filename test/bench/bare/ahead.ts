/** What the mornings of a week expect, in the bare loop: at slot x 7 + day of the week, or one number a slot. */
import { leastWhenShort } from './short.ts';
import { drawn, ready } from './stores.ts';

const MOST_PLANTINGS = 8;
const ofDay = () => new Float64Array(MOST_PLANTINGS * 7);

/** First day in the ground, the day after the last, the last watering day (-1: none) and the next watering after it. */
export const first = new Int32Array(MOST_PLANTINGS);
export const end = new Int32Array(MOST_PLANTINGS);
export const last = new Int32Array(MOST_PLANTINGS);
export const next = new Int32Array(MOST_PLANTINGS);
/** Depletion to reach on the last watering day. */
export const goal = new Float64Array(MOST_PLANTINGS);
/** Demand less rain up to the last watering, what a minute on each watering day brings, what later days ask for. */
export const change = ofDay();
export const gain = ofDay();
export const later = ofDay();
/** Up to so many minutes plants use all that they would. */
export const easy = ofDay();
/** Depletion above which the planting passes its allowed one before its next watering. */
export const pass = ofDay();

/** What the wetted ground is to give up to the next watering, where lines wet a part: at slot x 14 + days from the week's first. */
export const MOST_AHEAD = 14;
export const draws = new Float64Array(MOST_PLANTINGS * MOST_AHEAD);

export interface AheadDays {
  readonly etc: Float64Array;
  readonly raw: Float64Array;
  readonly taw: Float64Array;
  readonly target: Float64Array;
  readonly expectedRain: Float64Array;
  readonly asked: Float64Array;
}

/** The days of a week; `netBase`: where those of the planting's lines begin. */
export function spanWeek(
  slot: number,
  begin: number,
  mask: number,
  inGround: number,
  outOfGround: number,
  netBase: number,
  net: Float64Array,
): void {
  const from = Math.max(begin, inGround);
  const until = Math.min(begin + 7, outOfGround);
  first[slot] = from;
  end[slot] = until;
  const latest = lastWatering(begin, from, until, mask, netBase, net);
  last[slot] = latest;
  if (latest >= 0) next[slot] = nextWatering(begin, latest, mask, outOfGround);
}

/** Fills in `draws` from a morning on, on which the ground that lines do not wet is this dry. */
export function projectDraws(
  slot: number,
  begin: number,
  from: number,
  share: number,
  establishUntil: number,
  dryThen: number,
  base: number,
  { etc, raw, expectedRain }: AheadDays,
): void {
  const drawBase = slot * MOST_AHEAD - begin;
  let dry = dryThen;
  for (let day = Math.max(from, first[slot] as number); day <= (next[slot] as number); day++) {
    const need = etc[base + day] as number;
    const rain = expectedRain[base + day] as number;
    const ofDry = day <= establishUntil ? 0 : Math.min(need, ready(dry - rain, raw[base + day] as number));
    dry = Math.max(0, dry + ofDry - rain);
    draws[drawBase + day] = drawn(share, need, ofDry);
  }
}

/** Fills in the mornings from a day on; `needs` at `needBase`: what the wetted ground gives. */
export function lookAhead(
  slot: number,
  begin: number,
  mask: number,
  fromDay: number,
  base: number,
  netBase: number,
  needs: Float64Array,
  needBase: number,
  { raw, taw, target, expectedRain, asked: net }: AheadDays,
): void {
  const latest = last[slot] as number;
  const from = Math.max(fromDay, first[slot] as number);
  let allowed = allowedUntil(latest + 1, next[slot] as number, base, raw, needs, needBase);
  const aim = Math.max(0, Math.min(target[base + latest] as number, allowed));
  goal[slot] = aim;
  let sum = 0;
  let brought = 0;
  let minutes = 0;
  let most = Number.MAX_VALUE;
  for (let day = latest; day >= from; day--) {
    const at = slot * 7 + day - begin;
    later[at] = minutes;
    const need = needs[needBase + day] as number;
    const held = Math.min((raw[base + day] as number) + need, taw[base + day] as number) + sum - aim;
    if (held < most * brought) most = held / brought;
    easy[at] = most;
    sum += need - (expectedRain[base + day] as number);
    if ((mask >> (day - begin)) & 1) brought += net[netBase + day] as number;
    change[at] = sum;
    gain[at] = brought;
    if (brought > 0 && sum - aim > minutes * brought) minutes = (sum - aim) / brought;
    if (day < latest) {
      if ((mask >> (day + 1 - begin)) & 1) allowed = Number.POSITIVE_INFINITY;
      allowed = Math.min(allowed, raw[base + day + 1] as number);
    }
    allowed -= need;
    pass[at] = allowed;
  }
}

function lastWatering(
  begin: number,
  from: number,
  until: number,
  mask: number,
  netBase: number,
  net: Float64Array,
): number {
  let latest = -1;
  for (let day = until - 1; day >= from; day--) {
    if (((mask >> (day - begin)) & 1) === 0) continue;
    if ((net[netBase + day] as number) > 0) return day;
    if (latest < 0) latest = day;
  }
  return latest;
}

function nextWatering(begin: number, day: number, mask: number, outOfGround: number): number {
  for (let following = day + 1; following < outOfGround - 1; following++) {
    if ((mask >> ((following - begin) % 7)) & 1) return following;
  }
  return outOfGround - 1;
}

function allowedUntil(
  from: number,
  until: number,
  base: number,
  raw: Float64Array,
  needs: Float64Array,
  needBase: number,
): number {
  let sum = 0;
  let allowed = Number.POSITIVE_INFINITY;
  for (let day = from; day <= until; day++) {
    allowed = Math.min(allowed, (raw[base + day] as number) - sum);
    sum += needs[needBase + day] as number;
  }
  return allowed;
}

/** Least minutes that reach the goal from a morning on; `isPartly`: lines wet a part of the ground. */
export function asked(
  slot: number,
  begin: number,
  day: number,
  mask: number,
  depletion: number,
  isPartly: number,
  base: number,
  netBase: number,
  days: AheadDays,
): number {
  const at = slot * 7 + day - begin;
  const missing = depletion + (change[at] as number) - (goal[slot] as number);
  if (gain[at] === 0) return missing > 0 ? Number.POSITIVE_INFINITY : 0;
  const minutes = Math.max(later[at] as number, missing / (gain[at] as number));
  if (isPartly === 1 || minutes <= (easy[at] as number)) return minutes;
  const latest = last[slot] as number;
  const { expectedRain, asked: net } = days;
  return leastWhenShort(
    minutes,
    depletion,
    day,
    latest,
    begin,
    mask,
    goal[slot] as number,
    base,
    days,
    expectedRain,
    netBase,
    net,
  );
}

/** The same on some of the watering days alone. */
export function askedOn(
  slot: number,
  begin: number,
  day: number,
  open: number,
  depletion: number,
  isPartly: number,
  base: number,
  netBase: number,
  needs: Float64Array,
  needBase: number,
  days: AheadDays,
): number {
  const { raw, target, expectedRain, asked: net } = days;
  const latest = lastWatering(begin, day, end[slot] as number, open, netBase, net);
  if (latest < 0) return Number.POSITIVE_INFINITY;
  const allowed = allowedUntil(latest + 1, next[slot] as number, base, raw, needs, needBase);
  const aim = Math.max(0, Math.min(target[base + latest] as number, allowed));
  let sum = -aim;
  let brought = 0;
  let minutes = 0;
  for (let at = latest; at > day; at--) {
    sum += (needs[needBase + at] as number) - (expectedRain[base + at] as number);
    if ((open >> (at - begin)) & 1) brought += net[netBase + at] as number;
    if (brought > 0 && sum > minutes * brought) minutes = sum / brought;
  }
  sum += depletion + (needs[needBase + day] as number) - (expectedRain[base + day] as number);
  if ((open >> (day - begin)) & 1) brought += net[netBase + day] as number;
  if (brought === 0) return sum > 0 ? Number.POSITIVE_INFINITY : 0;
  const most = Math.max(minutes, sum / brought);
  if (isPartly === 1) return most;
  return leastWhenShort(most, depletion, day, latest, begin, open, aim, base, days, expectedRain, netBase, net);
}
