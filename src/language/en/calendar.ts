/** What a calendar of the season says: in the file, and where it is made. */
import { area } from '../area.ts';
import type { Format } from '../format/format.ts';

export const calendar = {
  /** Name of the calendar. */
  named: (plan: string) => `Watering: ${plan}`,
  /** Name of the file; `plan`: that of the plan's own. */
  file: (plan: string) => `${plan}-watering.ics`,
  event: {
    title: ({ minutes }: Format, zone: string, amount: number) => `Water ${zone}: ${minutes(amount)}`,
    run: ({ minutes, quantity }: Format, amount: number, litres: number) =>
      `Run ${minutes(amount)}, about ${quantity(litres, 'volume')}.`,
    /** `times`: by the garden's clock. */
    cycles: ({ count, minutes, list }: Format, cycleMinutes: number, times: readonly string[]) =>
      `${count(times.length, { one: 'cycle', other: 'cycles' })} of ${minutes(cycleMinutes)}, starting at ${list(times)}. Let it soak in between.`,
    start: (time: string) => `Start at ${time}.`,
    clock: (timeZone: string) => `Times are those of the garden (${timeZone}).`,
    open: ({ list }: Format, plantings: readonly string[]) => `Shut-off open: ${list(plantings)}.`,
    shut: ({ list }: Format, plantings: readonly string[]) => `Shut-off shut: ${list(plantings)}.`,
    tooLong: 'This day’s watering ends after the watering window. Check the plan.',
  },
  turn: {
    title: (zone: string) => `Turn shut-offs: ${zone}`,
    before: (time: string) => `Before the zone runs at ${time}:`,
  },
  form: {
    title: 'A calendar for a phone',
    says: 'One entry for each zone and watering day, with minutes, cycles and shut-offs. Import it into a calendar of its own.',
    what: 'What to write',
    contents: { runs: 'Every watering', turns: 'Only the turns of shut-offs' },
    from: 'From the week of',
    through: 'Through the week of',
    zones: 'Zones',
    timeZone: 'Time zone of the garden',
    ofDevice: 'This is the time zone of your device. Choose the garden’s if it lies elsewhere.',
    opensAt: 'Water may run from',
    more: 'Weeks, zones and ringing',
    rings: 'Ring',
    alarms: { none: 'not at all', start: 'at the start', quarter: '15 minutes before', evening: '12 hours before' },
    save: 'Save the calendar',
    again:
      'The calendar does not follow the plan: after a change, delete it and import it anew. Imported over the old one, days that still run are replaced, and days that no longer run stay.',
    none: 'Nothing runs in these weeks. Choose others.',
    noZone: 'Choose a zone.',
    weeksTurned: 'Choose a later last week.',
    unknownZone: (timeZone: string) => `This browser does not know the time zone “${timeZone}”. Choose another.`,
  },
};

export const calendarWords = area('calendar', calendar);
