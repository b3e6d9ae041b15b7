/** What the garden's editor says around its forms, and the form of the plan itself. */
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

export const garden = {
  title: 'Garden',
  startSays: 'Open a plan, or start a new one: first the place and its climate, then a zone and what grows in it.',
  /** Name of a plan that was started here. */
  newPlan: 'My garden',
  start: (units: string) => `Start a new plan: ${units}`,
  unitSystems: { us: 'Gallons, inches, °F', metric: 'Liters, millimeters, °C' },
  sections: {
    plan: 'Plan and season',
    site: 'Place and soil',
    climate: 'Climate',
    supply: 'Water supply',
    zones: 'Zones',
  },
  plan: {
    name: { label: 'Name' },
    firstDay: { label: 'First day of the season' },
    weeks: { label: 'Weeks in the season' },
    units: { label: 'Units' },
    notes: { label: 'Note' },
  },
  /** Why an entry was not taken; what was typed stays in its field. */
  refused: {
    expected: ({ list }: Format, expected: readonly string[]) => `Not saved. It needs ${list(expected)}.`,
    unread: (why: string) => `Not saved. ${why}`,
    empty: 'Not saved. Fill this in.',
  },
  /** What a field takes, before anything is typed. */
  takes: ({ list }: Format, expected: readonly string[]) => `It takes ${list(expected)}.`,
  /** After the name of a folded part: what is set in it. */
  folded: {
    nothing: 'nothing set',
    fact: (label: string, value: string) => `${label}: ${value}`,
    /** `isMore`: than these. */
    facts: (facts: readonly string[], isMore: boolean) => `${facts.join('; ')}${isMore ? '…' : ''}`,
    season: ({ count, day }: Format, weeks: number, firstDay: number) =>
      `${count(weeks, { one: 'week', other: 'weeks' })} from ${day(firstDay, 'full')}`,
  },
  /** After the name of a section of which nobody has said all. */
  assumed: 'assumed in part',
  actions: {
    copy: 'Copy',
    split: 'Split in two',
    cancel: 'Cancel',
    up: 'Move up',
    down: 'Move down',
    remove: 'Remove',
    undo: 'Undo',
  },
  /** What a button does, and to which: `Remove: Line 2`. */
  actionOn: (action: string, name: string) => `${action}: ${name}`,
};

export const gardenWords = area('garden', garden, {
  unitSystems: { metric: 'Litres, millimetres, °C' },
});
