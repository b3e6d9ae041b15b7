/** Where the water comes from, when it may run, and how much of it there is. */
import * as v from 'valibot';
import type { UnitSystem } from '../../engine/units.ts';
import { field, fields, maybe } from './fields.ts';
import { quantity, range } from './quantity.ts';
import { isoDay, name } from './text.ts';

/** Monday first, as in ISO 8601. */
export const WEEKDAYS = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'] as const;

const MOST_SOURCES = 100;

export const weekdays = v.pipe(
  v.array(v.picklist(WEEKDAYS, 'a weekday: mon, tue, wed, thu, fri, sat or sun'), 'a list of weekdays'),
  v.minLength(1, 'at least one weekday'),
  v.maxLength(7, 'at most seven weekdays'),
);

/** The source's flow: read off a meter or a sheet, or from a bucket test (a pail of known volume and a watch). */
function flowSchema(system: UnitSystem) {
  return v.variant(
    'kind',
    [
      fields('a typed flow', {
        kind: v.literal('typed', 'typed'),
        flow: field(quantity('supplyFlow', system), 'Flow of the source.'),
      }),
      fields('a bucket test', {
        kind: v.literal('bucket', 'bucket'),
        volume: v.pipe(
          quantity('volume', system),
          v.gtValue(0, 'a bucket that holds something'),
          v.description('What the bucket holds.'),
        ),
        seconds: field(range(0.5, 3600, 'seconds'), 'Time in which it filled.'),
      }),
    ],
    'a flow that is typed or from a bucket test',
  );
}

export function supplySchema(system: UnitSystem) {
  return fields('a supply', {
    sources: v.pipe(
      v.array(
        fields('a source', {
          from: maybe(isoDay, 'Day from which it serves. Left out: the season’s first.'),
          name,
          flow: v.optional(flowSchema(system)),
          pressure: maybe(quantity('pressure', system), 'Pressure at the source while water runs.'),
        }),
        'a list of sources',
      ),
      v.maxLength(MOST_SOURCES, `at most ${MOST_SOURCES} sources`),
      v.description('Each from a day on: the hose now, the main later.'),
    ),
    window: maybe(
      fields('a watering window', {
        weekdays: maybe(weekdays, 'Days on which water may run. Left out: every day.'),
        hoursPerDay: field(range(0.1, 24, 'hours'), 'Hours a day in which water may run.'),
      }),
      'When water may run.',
    ),
    allowance: maybe(
      fields('an allowance', {
        perWeek: maybe(quantity('volume', system), 'Most water in a week.'),
        perSeason: maybe(quantity('volume', system), 'Most water in the season.'),
      }),
      'How much may be used.',
    ),
    tank: maybe(
      fields('a tank', {
        capacity: field(quantity('volume', system), 'What the tank holds.'),
        start: field(quantity('volume', system), 'What is in it on the season’s first day.'),
        roofArea: maybe(quantity('area', system), 'Roof that feeds it, as seen from above. Left out: none.'),
        runoffCoefficient: maybe(range(0, 1), 'Share of the roof’s rain that reaches it.'),
      }),
      'A rain tank. Its water is not for drinking.',
    ),
  });
}
