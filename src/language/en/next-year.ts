/** Next year’s plan: what is asked, and what is shown before it is made. */
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

export const nextYear = {
  name: 'Name',
  firstDay: 'First day',
  weeks: 'Weeks',
  plantings: 'What becomes of each planting',
  lines:
    'Lines that lay at the end of this season are laid again from the first day. Sowing days move with the season.',
  stays: 'Stays',
  ends: 'Ends',
  moves: (zone: string) => `Moves to ${zone}`,
  /** Of a choice: the planting that it is of. */
  fate: (planting: string) => `${planting} next year`,
  add: 'New plantings',
  addSays: 'Give it a name and a zone. Its size, need and line are filled in later, under Garden.',
  newName: 'Name of the new planting',
  newZone: 'Zone',
  addOne: 'Add it',
  added: (planting: string, zone: string) => `${planting}, in ${zone}`,
  remove: (planting: string) => `Take out ${planting}`,
  weather: 'This year’s weather',
  keepWeather: 'Keep it as a real year of this place',
  weatherKept: ({ number }: Format, read: number, days: number) =>
    `Rain is known for ${number(read)} of ${number(days)} days. The season over many years then has this one too.`,
  weatherNotKept: ({ number }: Format, read: number, days: number) =>
    `Rain is known for ${number(read)} of ${number(days)} days, which is too few to keep it as a year.`,
  /** Where the weather of a year comes from, as it stands in the plan. */
  source: (firstYear: string) => `This garden’s own log, ${firstYear}`,
  learned: 'What the log teaches',
  learnedSays:
    'More minutes than computed can mean that less water arrives than planned, or that plants got too much. Use it only where the plants did well.',
  noLog: 'No zone has a log of what really ran.',
  learnedOf: ({ count, duration }: Format, weeks: number, run: number, computed: number) =>
    `In ${count(weeks, WEEKS)} with a log: ${duration(run)} really run, ${duration(computed)} computed.`,
  use: ({ percent }: Format, then: number, now: number) =>
    `Compute with an irrigation efficiency of ${percent(then)} instead of ${percent(now)}`,
  nothingToUse: 'Too few weeks, or too small a difference, to change anything.',
  save: 'Save next year’s plan',
  saveAndOpen: 'Save both plans and open next year’s',
  close: 'Close',
  saved: (file: string) => `Saved as ${file}. Open it when the season begins.`,
};

const WEEKS = { one: 'week', other: 'weeks' };

export const nextYearWords = area('nextYear', nextYear);
