/** What a newer version of the plan's format changes for a plan that an earlier one wrote. */
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

export const versionChanges = {
  title: 'An earlier version wrote this plan. What is different now:',
  /** Ways by their names, as in the garden's place. */
  rainMethod: (from: string, to: string) =>
    `Rain from monthly normals is counted another way: ${to}, no longer ${from}. To count as before, choose that way in the garden’s place.`,
  /** Shares of the allowed depletion. */
  targetDepletion: ({ count, number, percent }: Format, plantings: number, from: number, to: number) =>
    `${count(plantings, { one: 'planting now keeps', other: 'plantings now keep' })} ${percent(to)} of the allowed depletion free for rain. To water as before, set a target depletion of ${number(from, 2)}.`,
  rainReadThrough: ({ count }: Format, weeks: number) =>
    `${count(weeks, { one: 'weekly rain total counts', other: 'weekly rain totals count' })} as read through the last day of the week.`,
  linesEnded: ({ count }: Format, lines: number) =>
    `Several lines can lie at once now. ${count(lines, { one: 'line that a later one replaced has', other: 'lines that a later one replaced have' })} a last day: the day before the next.`,
  wettedAnew: ({ count }: Format, plantings: number) =>
    `Where later lines wet more or less of the ground, that share changes in their week: ${count(plantings, { one: 'planting has', other: 'plantings have' })} such lines.`,
  flowAtPressure: ({ count }: Format, sources: number) =>
    `Lines now give what their pressure gives, and ${count(sources, { one: 'source has a pressure', other: 'sources have a pressure' })}. Check that it is the pressure at the lines, behind any regulator.`,
  bucketShare: ({ count, percent }: Format, sources: number, share: number) =>
    `Of an open bucket’s flow ${percent(share)} is planned on: ${count(sources, { one: 'source has', other: 'sources have' })} less. Change the share where the source is.`,
  efficiencyByLine: ({ count }: Format, zones: number) =>
    `Each line now has the efficiency of its kind: ${count(zones, { one: 'zone has', other: 'zones have' })} micro-spray beside drip, which lowered that of the drip.`,
  loopEmitters: ({ count }: Format, lines: number) =>
    `Emitters around a plant are counted to the nearest whole one: ${count(lines, { one: 'line lies', other: 'lines lie' })} in loops.`,
  groundWetted: ({ count }: Format, plantings: number) =>
    `Where emitters wet only part of the ground, that part dries first: ${count(plantings, { one: 'planting has', other: 'plantings have' })} drip. To water as before, give the share wetted of such a planting as 1.`,
  rootsGrow: ({ count }: Format, plantings: number) =>
    `Roots of annual crops start shallow and grow: ${count(plantings, { one: 'planting needs', other: 'plantings need' })} less water at a time, more often, when young.`,
  dryDown: ({ count }: Format, plantings: number) =>
    `${count(plantings, { one: 'planting of onions or garlic is', other: 'plantings of onions or garlic are' })} left dry before harvest. To water on, give 0 days to dry.`,
  frozenGround: ({ count }: Format, months: number) =>
    `Frozen ground gets no water: in ${count(months, { one: 'month', other: 'months' })} of the season the usual low is below freezing.`,
  namesCleaned: ({ count }: Format, names: number) =>
    `${count(names, { one: 'name was', other: 'names were' })} cleaned: tabs and line breaks became spaces, and a name that showed nothing is now the id or the number of what it names. Rename it in the garden.`,
};

export const versionChangesWords = area('versionChanges', versionChanges);
