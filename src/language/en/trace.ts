/** What the trace says around its steps. */
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

export const trace = {
  title: 'Why this number?',
  choose: 'Select a cell of the sheet, and every step that leads to its number appears here.',
  /** Minutes, and irrigation in L, of a zone's week. */
  whyZone: ({ minutes, quantity }: Format, run: number, litres: number) =>
    `Why ${minutes(run)}, ${quantity(litres, 'volume')}?`,
  why: ({ quantity }: Format, litres: number) => `Why ${quantity(litres, 'volume')}?`,
  /** In mm. */
  whyWeather: {
    eto: ({ quantity }: Format, mm: number) => `Why ${quantity(mm, 'depth')} of reference ET?`,
    rain: ({ quantity }: Format, mm: number) => `Why ${quantity(mm, 'depth')} of rain?`,
  },
  /** Three sentences before the steps; depths in mm. */
  answer: {
    need: ({ quantity }: Format, mm: number) => `This week the plants need ${quantity(mm, 'depth')}.`,
    needMost: ({ quantity }: Format, mm: number, most: string, mostMm: number) =>
      `This week the plants need ${quantity(mm, 'depth')}, most of all ${most}: ${quantity(mostMm, 'depth')}.`,
    /** `countedMm` of the rain that fell, or of the usual rain. */
    rainFell: ({ quantity }: Format, countedMm: number, mm: number) =>
      `Rain gave ${quantity(countedMm, 'depth')} of the ${quantity(mm, 'depth')} that fell.`,
    rainUsual: ({ quantity }: Format, countedMm: number, mm: number) =>
      `Rain gives ${quantity(countedMm, 'depth')} of the ${quantity(mm, 'depth')} that usually falls.`,
    noRainFell: 'No rain fell.',
    noRainUsual: 'No rain is usual this week.',
    /** Before the planting's name and `runs`. */
    decides: 'The run is set by',
    runs: ({ count, minutes, list }: Format, runs: readonly { readonly days: number; readonly minutes: number }[]) =>
      list(runs.map((run) => `${count(run.days, { one: 'day', other: 'days' })} of ${minutes(run.minutes)}`)),
    cause: {
      weighted: (runs: string) => `The run is the mean of what the plantings ask for, by their areas: ${runs}.`,
      'hand-set': (runs: string) =>
        runs === '' ? 'The run is set by hand: none.' : `The run is set by hand: ${runs}.`,
      run: (runs: string) => (runs === '' ? 'It was logged as not run.' : `It was logged as run: ${runs}.`),
      closed: () => 'The zone is closed this week.',
      skipped: () => 'No run: less than half a step of the timer is needed.',
      none: () => 'No run is needed.',
    },
    /** Of one planting: what its roots get of what they need. */
    planting: ({ quantity }: Format, name: string, mm: number) =>
      `What ${name} would use this week: ${quantity(mm, 'depth')}.`,
    received: ({ quantity, count }: Format, days: number, litres: number, share: string) =>
      `It is watered on ${count(days, { one: 'day', other: 'days' })}: ${quantity(litres, 'volume')}${share === '' ? '' : `, ${share} of what it lacks`}.`,
  },
  /** Of the folds beneath, and what each comes to. */
  groups: { weather: 'Weather', need: 'Need', minutes: 'Minutes', check: 'Check' },
  weatherSays: ({ quantity }: Format, etoMm: number, rainMm: number) =>
    `ETo ${quantity(etoMm, 'depth')}, rain ${quantity(rainMm, 'depth')}`,
  checkSays: ({ count, number }: Format, met: number, plantings: number) =>
    met === plantings
      ? `${count(plantings, { one: 'planting', other: 'plantings' })}, need met`
      : `${number(met)} of ${count(plantings, { one: 'planting', other: 'plantings' })} met`,
  /** What can be done with the week of a zone. */
  actions: {
    title: 'Change this week',
    setMinutes: 'Set minutes…',
    minutes: 'Minutes in the week',
    whatMinutes: 'Type a number of minutes, such as 45.',
    set: 'Set',
    useComputed: 'Use computed minutes',
    close: 'Close for the week',
    open: 'Open for the week',
    addNote: 'Add a note…',
    changeNote: 'Change the note…',
    note: 'Note',
  },
  stepsOf: (planting: string) => `Show the steps for ${planting}`,
  wholeGarden: 'Whole garden',
  whose: 'For',
  wholeZone: 'The whole zone',
  steps: 'Steps, in the order they are worked out',
  formula: 'Formula',
  source: 'Source',
};

export const traceWords = area('trace', trace);
