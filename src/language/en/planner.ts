/** All that the planner itself says; its parts have words of their own. */
import type { DayNumber } from '../../engine/calendar.ts';
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

export const planner = {
  unnamed: 'Watering plan',
  undo: 'Undo',
  redo: 'Redo',
  newPlan: 'New plan',
  open: 'Open…',
  save: 'Save',
  copyLink: 'Copy link',
  link: 'Link with the plan',
  linkCopied: 'Copied: a link with the whole plan as it is now. No server sees the plan.',
  linkToCopy: 'The browser does not let the page copy. Copy the link from the field.',
  longLink: ({ count }: Format, characters: number) =>
    `It has ${count(characters, { one: 'character', other: 'characters' })}, and some mail and chat programs cut such a link: a file is safer.`,
  season: ({ count, day }: Format, weeks: number, firstDay: DayNumber, zones: number, plantings: number) =>
    `${count(weeks, { one: 'week', other: 'weeks' })} from ${day(firstDay, 'full')}, ${count(zones, { one: 'zone', other: 'zones' })}, ${count(plantings, { one: 'planting', other: 'plantings' })}`,
  views: 'Views',
  view: {
    season: 'Season',
    week: 'This week',
    mix: 'Mixed zones',
    garden: 'Garden',
    files: 'Files',
  },
  panel: 'Beside the sheet',
  tab: { trace: 'Why', notices: 'Attention', chart: 'Chart' },
  /** Behind the name of what needs attention. */
  urgent: ({ number }: Format, notices: number) => `${number(notices)} urgent`,
  refused: ({ count }: Format, faults: number) =>
    `Not done: fix ${count(faults, { one: 'thing', other: 'things' })} first. The plan is as it was.`,
  seeFaults: 'See what to fix',
};

export const plannerWords = area('planner', planner);
