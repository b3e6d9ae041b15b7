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
  namesCleaned: ({ count }: Format, names: number) =>
    `${count(names, { one: 'name was', other: 'names were' })} cleaned: tabs and line breaks became spaces, and a name that showed nothing is now the id or the number of what it names. Rename it in the garden.`,
};

export const versionChangesWords = area('versionChanges', versionChanges);
