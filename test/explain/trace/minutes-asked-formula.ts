/** The minutes that a planting asks for, worked again from its step: by division, or by trial through the whole balance. */
import { type StepInputs, total } from './step-inputs.ts';

export function minutesAsked(given: StepInputs): number | string {
  switch (given.variant) {
    case 'no-line':
      return given.num('need') > 0 && given.num('rate-on-watering-days') === 0 ? 'no-run-is-enough' : Number.NaN;
    case 'nothing':
      return given.num('need') === 0 ? 0 : Number.NaN;
    case 'trial':
      return byTrial(given);
    default:
      return byDivision(given);
  }
}

function byDivision(given: StepInputs): number {
  const lacking =
    given.num('day-depletion-start') + given.num('demand-between') - given.num('rain-between') - given.num('goal');
  const days = given.by('watering-days', 'line');
  const rates = given.by('net-rate', 'line');
  const gain = total([...rates].map(([line, rate]) => rate * (days.get(line) ?? Number.NaN)));
  return Math.max(0, (60 * lacking) / gain);
}

interface Day {
  readonly etc: number;
  readonly rain: number;
  readonly raw: number;
  /** Net mm of a minute. */
  readonly gain: number;
}

function byTrial(given: StepInputs): number {
  const rain = given.by('day-rain-soaked', 'day');
  const raw = given.by('day-readily-available', 'day');
  const rates = given.by('day-net-rate', 'day');
  const days = [...given.by('day-demand', 'day')].map(
    ([day, etc]): Day => ({
      etc,
      rain: rain.get(day) ?? Number.NaN,
      raw: raw.get(day) ?? Number.NaN,
      gain: (rates.get(day) ?? 0) / 60,
    }),
  );
  const start = given.num('depletion-start');
  const taw = given.num('available-water');
  const goal = given.num('goal');
  let enough = 0;
  for (let from = 0; from < days.length; from++) {
    const rest = days.slice(from);
    const lacking = (from === 0 ? start : 0) + total(rest.map(({ etc, rain }) => etc - rain)) - goal;
    const gain = total(rest.map((day) => day.gain));
    if (gain > 0) enough = Math.max(enough, lacking / gain);
  }
  const course = (minutes: number) => balance(days, { start, taw, minutes });
  if (!course(enough).some((depletion, place) => depletion > (days[place]?.raw ?? Number.POSITIVE_INFINITY) + 1e-9))
    return enough;
  let low = 0;
  for (let halving = 0; halving < 60; halving++) {
    const middle = (low + enough) / 2;
    if ((course(middle).at(-1) ?? Number.NaN) <= goal + 1e-9) enough = middle;
    else low = middle;
  }
  return enough;
}

/** Depletion at each day's start, and at the last one's end: FAO-56 eq. 84 to 88. */
function balance(
  days: readonly Day[],
  { start, taw, minutes }: { readonly start: number; readonly taw: number; readonly minutes: number },
): readonly number[] {
  const depletions = [start];
  for (const { etc, rain, raw, gain } of days) {
    const before = depletions.at(-1) ?? Number.NaN;
    const ks = before <= raw ? 1 : Math.max(0, (taw - before) / (taw - raw));
    const brought = rain + minutes * gain;
    depletions.push(Math.max(0, before + Math.min(ks * etc, taw - before + brought) - brought));
  }
  return depletions;
}
