/** All that the planner itself says; its parts have words of their own. */
import type { Fault } from '../../../plan/reading/fault.ts';

export const plannerWords = {
  unnamed: 'Watering plan',
  undo: 'Undo',
  redo: 'Redo',
  open: 'Open…',
  save: 'Save',
  copyLink: 'Copy link',
  link: 'Link with the plan',
  linkCopied: 'Copied: a link with the whole plan as it is now. No server sees the plan.',
  linkToCopy: 'The browser does not let the page copy. Copy the link from the field.',
  longLink: (characters: string) =>
    `It is ${characters} characters long, and some mail and chat programs cut such a link: a file is safer.`,
  season: (weeks: string, from: string, zones: string, plantings: string) =>
    `${weeks} from ${from}, ${zones}, ${plantings}`,
  weeks: { one: 'week', other: 'weeks' },
  zones: { one: 'zone', other: 'zones' },
  plantings: { one: 'planting', other: 'plantings' },
  parts: 'Parts of the planner',
  part: {
    grid: 'Weeks',
    chart: 'Chart',
    trace: 'Why',
    notices: 'Attention',
    week: 'This week',
    mix: 'Mixed zone',
    garden: 'Garden',
    files: 'Files',
  },
  mix: 'Compare the plantings of one zone, and what would help',
  refused: (faults: readonly Fault[]) =>
    faults.length === 1
      ? 'Not taken over: one thing is wrong. The plan is as it was.'
      : `Not taken over: ${faults.length} things are wrong. The plan is as it was.`,
  seeFaults: 'See what to put right',
} as const;
