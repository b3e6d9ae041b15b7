import { describe, expect, it } from 'vitest';
import type { Garden, GardenZone } from '../../../src/engine/garden.ts';
import { runSeason } from '../../../src/engine/season/run-season.ts';
import { zoneFigure } from '../../../src/engine/season/zone-week.ts';
import { sheetWords } from '../../../src/language/en/sheet.ts';
import { formatFor } from '../../../src/language/format/format.ts';
import { readerFor } from '../../../src/language/reader.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { gardenSeason, plantingTotal } from '../../../src/sheet/totals.ts';
import { FIRST_DAY, plainGarden, plainPlanting, plainZone } from '../../support/plain-garden.ts';
import { mixedGarden, oneBed } from '../../support/small-plans.ts';
import { cellOf, rowOf, sheetOf } from '../sheet-of.ts';

const reader = readerFor('en-US', 'us');
const format = formatFor(reader);
const words = sheetWords(reader.language);
const say = words.description;
/** Litres in 60 gal and mm in 0.3 in. */
const SIXTY_GALLONS = 60 * 3.785411784;

function description(plan: Plan, row: string, at: string): string {
  const sheet = sheetOf(plan);
  return sheet.describe(cellOf(sheet, row, at));
}

const byHand = (minutes: number): Plan => oneBed({ choices: { beds: { '2027-06-14': { minutes } } } });
const weekOf = (day: string) => format.weekOf(Date.parse(day) / 86_400_000);

describe('a zone’s week in words', () => {
  it('says its water, and that its minutes were set by hand', () => {
    const text = description(byHand(50), 'beds', '2027-06-14');
    expect(text.startsWith(`${say.row('Beds', weekOf('2027-06-14'))}:`)).toBe(true);
    expect(text).toContain(say.run['hand-set'](format, SIXTY_GALLONS, 50));
    expect(description(byHand(50), 'beds', '2027-06-07')).not.toContain('by hand');
  });

  it('says its state', () => {
    const text = description(byHand(0), 'beds', '2027-06-14');
    expect([say.states.dry, say.states.short].some((state) => text.includes(state))).toBe(true);
    expect(description(mixedGarden(), 'containers', '2027-08-02')).toContain(say.states.closed);
  });

  it('ends with its note', () => {
    expect(description(mixedGarden(), 'beds', '2027-07-12').endsWith(say.withNote('.', 'Heat is coming.'))).toBe(true);
  });

  it('says so while nothing is in the ground, and the note that was made of it', () => {
    const season = { firstDay: '2027-04-05', weeks: 12 };
    const off = say.whole(say.row('Beds', weekOf('2027-04-05')), [say.states.off]);
    expect(description(oneBed({ season }), 'beds', '2027-04-05')).toBe(off);
    const choices = { beds: { '2027-04-05': { note: 'Dig.' } } };
    expect(description(oneBed({ season, choices }), 'beds', '2027-04-05')).toBe(say.withNote(off, 'Dig.'));
  });
});

describe('a planting’s week in words', () => {
  it('says on how many days its shut-off was open, and whether that was set by hand', () => {
    // One of Wednesday, Friday and Sunday: the last.
    expect(description(mixedGarden(), 'shrubs', '2027-07-12')).toContain(say.shutOffByHand(format, 1, 3, 'Sun'));
    const computed = description(mixedGarden(), 'shrubs', '2027-07-05');
    const days = [[''], ['Wed', 'Fri', 'Sun'], ['Wed and Fri', 'Wed and Sun', 'Fri and Sun'], ['Wed, Fri, and Sun']];
    const said = days.flatMap((named, open) => named.map((each) => `${say.shutOffOpen(format, open, 3, each)};`));
    expect(said.filter((each) => computed.includes(each))).toHaveLength(1);
  });

  it('says nothing of days without a shut-off', () => {
    const text = description(mixedGarden(), 'tomatoes', '2027-07-12');
    expect([0, 1, 2, 3].some((open) => text.includes(say.shutOffOpen(format, open, 3, '')))).toBe(false);
  });
});

// The weeks are worked by hand in test/engine/season/zone-runs.test.ts.
describe('a week whose days differ in words', () => {
  const wordsOf = (row: string, garden: Garden, week = 0) => {
    const sheet = sheetOf(oneBed(), { season: runSeason(garden) });
    return sheet.describe({ row: rowOf(sheet, row), column: { kind: 'week', week } });
  };
  const rained = (days: readonly number[]) => ({
    observed: { days: new Map(days.map((day) => [FIRST_DAY + day, { rainMm: 10 }])), weeks: new Map() },
  });

  it('names the minutes of each day', () => {
    const text = wordsOf('zone', plainGarden([plainZone()], rained([4])));
    expect(text).toContain(say.run.computed(format, 172, 172));
    expect(text).toContain(
      `; ${say.runOn(format, 109, FIRST_DAY, 0b0001000)}; ${say.runOn(format, 63, FIRST_DAY, 0b1000000)};`,
    );
  });

  it('names a day that is skipped, and what the others run', () => {
    const text = wordsOf('zone', plainGarden([plainZone({ timerStepMinutes: 90 })], rained([4, 5])));
    expect(text).toContain(
      `; ${say.runOn(format, 90, FIRST_DAY, 0b0001000)}; ${say.skippedOn(format, FIRST_DAY, 0b1000000)};`,
    );
  });

  it('says no more of days that are alike than of any week', () => {
    const text = wordsOf('zone', plainGarden());
    expect(text).toContain(`${say.run.computed(format, 218, 218)}; ${say.rainCounted(format, 0)};`);
  });

  it('says what became of a refill', () => {
    const refilled = (choices: GardenZone['choices']) =>
      plainGarden([plainZone({ choices, plantings: [plainPlanting({ watering: 'refill' })] })]);
    expect(wordsOf('bed', refilled(new Map()), 1)).toContain(say.refill.filled);
    expect(wordsOf('bed', refilled(new Map([[1, { minutes: 20 }]])), 1)).toContain(say.refill['partly-filled']);
    expect(wordsOf('bed', refilled(new Map([[1, { minutes: 0 }]])), 1)).toContain(say.refill.due);
    expect(Object.values(say.refill).some((each) => wordsOf('bed', refilled(new Map())).includes(each))).toBe(false);
  });
});

describe('a week of weather in words', () => {
  it('says where its figure comes from', () => {
    expect(description(mixedGarden(), 'rain', '2027-04-12')).toContain(say.fromNormals);
    expect(description(mixedGarden(), 'rain', '2027-04-19')).toContain(say.someDaysRead(format, 2, 7));
    expect(description(mixedGarden(), 'rain', '2027-05-03')).toBe(
      say.whole(say.row(words.rows.rain, weekOf('2027-05-03')), [say.depth(format, 7.62), say.weekTotal]),
    );
  });
});

describe('a week of rain that was read through a day', () => {
  it('says so', () => {
    const log = { weeks: { '2027-05-03': { rain: 0.3, rainThrough: '2027-05-05' } } };
    expect(description(mixedGarden({ log }), 'rain', '2027-05-03')).toContain(
      say.weekTotalThrough(format, Date.parse('2027-05-05') / 86_400_000),
    );
  });
});

describe('the whole season in words', () => {
  const sheet = sheetOf(mixedGarden());
  const { season } = sheet.state;
  const [beds] = season.zones;
  const shrubs = beds?.plantings.find(({ planting }) => planting.id === 'shrubs');
  if (beds === undefined || shrubs === undefined) throw new Error('the garden is another');
  const text = (row: string) => sheet.describe(cellOf(sheet, row, 'season'));

  it('of a zone', () => {
    const sumOf = (field: 'litres' | 'minutes' | 'rainCreditMm') =>
      Array.from({ length: beds.weeks }, (_, week) => zoneFigure(beds, field, week)).reduce((sum, each) => sum + each);
    expect(text('beds')).toBe(
      say.whole(say.row('Beds', say.wholeSeason), [
        say.run.computed(format, sumOf('litres'), sumOf('minutes')),
        say.rainCounted(format, sumOf('rainCreditMm')),
      ]),
    );
  });

  it('of a planting', () => {
    const { litres, metShare } = plantingTotal(beds, shrubs);
    expect(text('shrubs')).toBe(
      say.whole(say.planting('Shrubs', 'Beds', say.wholeSeason), [
        say.received(format, litres),
        say.shareOfSeason(format.percent(metShare ?? Number.NaN)),
      ]),
    );
  });

  it('of the garden', () => {
    const { litres, minutes, savedLitres } = gardenSeason(season);
    expect(text('total')).toBe(
      say.whole(say.row(words.rows.total, say.wholeSeason), [
        say.volume(format, litres),
        say.runTime(format, minutes),
        say.savedByRain(format, savedLitres),
      ]),
    );
  });

  it('is not asked of a name, which says what stands behind it', () => {
    expect(sheet.describe(cellOf(sheet, 'beds', 'name'))).toBe(
      words.nameWithDetail('Beds', words.detail.daysAWeek(format, 3, 3)),
    );
    expect(sheet.describe(cellOf(sheet, 'rain', 'name'))).toBe(
      words.nameWithUnit(words.rows.rain, words.detail.unit('in')),
    );
  });
});
