/** The minutes that a planting asks for, worked again from its step: by division, or by trial through the whole balance. */
import { type StepInputs, total } from './step-inputs.ts';

export function minutesAsked(given: StepInputs): number | string {
  if (given.has('Net application rate on its watering days')) return 'no run is long enough';
  if (given.has('Net need')) return given.num('Net need') === 0 ? 0 : Number.NaN;
  return given.has('Total available water TAW') ? byTrial(given) : byDivision(given);
}

function byDivision(given: StepInputs): number {
  const start = total(given.starting('Depletion at the start of ').values());
  const demand = total(given.starting('Demand, ').values());
  const rain = total(given.starting('Rain that soaks in, ').values());
  const days = given.starting('Watering days');
  const rates = given.starting('Net application rate');
  const gain = total([...rates].map(([line, rate]) => rate * (days.get(line) ?? Number.NaN)));
  return Math.max(0, (60 * (start + demand - rain - goalOf(given))) / gain);
}

interface Day {
  readonly etc: number;
  readonly rain: number;
  readonly raw: number;
  /** Net mm of a minute. */
  readonly gain: number;
}

const goalOf = (given: StepInputs) => total(given.starting('Depletion to reach by the end of ').values());

function byTrial(given: StepInputs): number {
  const names = [...given.ending(', ETc').keys()];
  const days = names.map(
    (name): Day => ({
      etc: given.num(`${name}, ETc`),
      rain: given.num(`${name}, rain that soaks in`),
      raw: given.num(`${name}, RAW`),
      gain: given.numOr(`${name}, net application rate`, 0) / 60,
    }),
  );
  const start = given.num('Depletion at the week’s start');
  const taw = given.num('Total available water TAW');
  const goal = goalOf(given);
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
