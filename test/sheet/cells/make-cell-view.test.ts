import { describe, expect, it } from 'vitest';
import { runSeason } from '../../../src/engine/season/run-season.ts';
import { sheetWords } from '../../../src/language/en/sheet.ts';
import { US_ENGLISH } from '../../../src/language/language.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { fitted } from '../../../src/sheet/cells/cell-classes.ts';
import type { FigureView, NameView } from '../../../src/sheet/cells/cell-view.ts';
import { MEASURES } from '../../../src/sheet/sheet-view.ts';
import { gardenSeason } from '../../../src/sheet/totals.ts';
import { plainGarden, plainPlanting, plainZone } from '../../support/plain-garden.ts';
import { metricGarden, mixedGarden, oneBed, shrubs, zone } from '../../support/small-plans.ts';
import { cellOf, rowOf, sheetOf } from '../sheet-of.ts';

const words = sheetWords(US_ENGLISH);
const byHand = (minutes: number): Plan => oneBed({ choices: { beds: { '2027-06-14': { minutes } } } });

function viewOf(plan: Plan, row: string, at: string): FigureView {
  const sheet = sheetOf(plan);
  return sheet.cellView(cellOf(sheet, row, at)) as FigureView;
}

const classesOf = ({ className }: FigureView | NameView) => className.split(' ');

describe('a zone’s week', () => {
  // 4 rows of 20 ft with an emitter every 12 in are 80 emitters of 0.9 gph: 72 gph, in 50 minutes 60 gal. On 120 ft²
  // that is 60 gal / 120 ft² = 20.4 mm (1 gal on 1 ft² is 40.746 mm), between the depths at which grounds 5 and 6 begin.
  const view = viewOf(byHand(50), 'beds', '2027-06-14');

  it('shows gallons, minutes and rain', () => {
    expect(view.main).toBe('60');
    expect(view.lines[0]).toBe('50');
    expect(view.lines[1]).toMatch(/^\d\.\d\d$/);
  });

  it('stands on the ground of its depth', () => {
    expect(classesOf(view)).toContain('runnel-tone-3');
  });

  it('is marked where it was set by hand', () => {
    expect(classesOf(view)).toContain('runnel-by-hand');
    expect(classesOf(viewOf(byHand(50), 'beds', '2027-06-07'))).not.toContain('runnel-by-hand');
  });

  it('carries its state in its class', () => {
    expect(classesOf(viewOf(mixedGarden(), 'containers', '2027-08-02'))).toContain('runnel-state-closed');
  });

  it('is marked where it has a note', () => {
    const noted = viewOf(mixedGarden(), 'beds', '2027-07-12');
    expect(classesOf(noted)).toContain('runnel-noted');
  });

  // By hand, with the plain garden: a minute brings 0.08 mm, so that a step of 600 min brings 48. Thursday asks for 17.5 / 0.16 = 109 min.
  it('says so where every run of the week is skipped', () => {
    const season = runSeason(plainGarden([plainZone({ timerStepMinutes: 600 })]));
    const sheet = sheetOf(oneBed(), { season });
    const skipped = sheet.cellView({ row: rowOf(sheet, 'zone'), column: { kind: 'week', week: 0 } }) as FigureView;
    expect(skipped).toMatchObject({ main: words.cell.skipped, lines: ['', expect.stringMatching(/^\d\.\d\d$/)] });
  });

  it('is empty paper while nothing is in the ground', () => {
    const off = viewOf(oneBed({ season: { firstDay: '2027-04-05', weeks: 12 } }), 'beds', '2027-04-05');
    expect(off).toMatchObject({ main: '', lines: [] });
    expect(classesOf(off)).not.toContain('runnel-tone-0');
  });

  it('is written smaller where a figure has many digits', () => {
    expect(classesOf(view)).not.toContain('runnel-long');
    const short = {
      kind: 'figure',
      main: '99,999',
      lines: ['9,999', '0.25'],
      className: 'runnel-cell',
    } as const;
    expect(fitted(short)).toBe(short);
    expect(fitted({ ...short, main: '123,456' }).className).toBe('runnel-cell runnel-long');
    expect(fitted({ ...short, lines: ['123,456', '0.25'] }).className).toBe('runnel-cell runnel-long');
    // A sign takes room of its own.
    const signed = { ...short, className: 'runnel-cell runnel-sign-over' };
    expect(fitted({ ...signed, main: '1,234' }).className).toBe('runnel-cell runnel-sign-over runnel-long');
    expect(fitted({ ...signed, main: '999' }).className).toBe('runnel-cell runnel-sign-over');
    expect(fitted({ ...signed, className: 'runnel-state-met', main: '1,234' }).className).toBe('runnel-state-met');
  });

  it('shows one figure where one is asked for', () => {
    const sheet = sheetOf(byHand(50));
    const shown = MEASURES.map((measure) => {
      sheet.show({ measure });
      const { main, lines } = sheet.cellView(cellOf(sheet, 'beds', '2027-06-14')) as FigureView;
      return [main, lines.length];
    });
    expect(shown).toEqual([
      ['60', 2],
      ['60', 0],
      ['50', 0],
      [expect.stringMatching(/^0\.\d\d$/), 0],
    ]);
  });
});

describe('a planting’s week', () => {
  it('shows what it received against its need, and the days its shut-off was open', () => {
    const view = viewOf(mixedGarden(), 'shrubs', '2027-07-12');
    expect(view.lines[1]).toBe('1 of 3');
    expect(classesOf(view)).toContain('runnel-by-hand');
  });

  // Worked by hand in test/engine/season/zone-runs.test.ts.
  it('shows what became of a refill', () => {
    const lineOf = (minutes?: number) => {
      const choices = new Map(minutes === undefined ? [] : [[1, { minutes }]]);
      const refilled = plainZone({ choices, plantings: [plainPlanting({ watering: 'refill' })] });
      const sheet = sheetOf(oneBed(), { season: runSeason(plainGarden([refilled])) });
      return (sheet.cellView({ row: rowOf(sheet, 'bed'), column: { kind: 'week', week: 1 } }) as FigureView).lines[0];
    };
    expect(lineOf()).toBe(words.cell.refill.filled());
    expect(lineOf(20)).toMatch(/^\d+%, due$/);
    expect(lineOf(0)).toBe(words.cell.refill.due());
  });

  it('shows no days without a shut-off', () => {
    const view = viewOf(mixedGarden(), 'tomatoes', '2027-07-12');
    expect(view.lines[1]).toBe('');
  });

  it('sums with its neighbours to the zone', () => {
    const plan = oneBed({ zones: [zone({ plantings: [shrubs({ shutOff: false }), ...zone().plantings] })] });
    const sheet = sheetOf(plan);
    sheet.show({ measure: 'volume' });
    const litres = (row: string) => Number(sheet.value(cellOf(sheet, row, '2027-06-14')));
    expect(litres('shrubs') + litres('tomatoes')).toBeCloseTo(litres('beds'), 9);
  });
});

describe('the weather', () => {
  it('carries a bar as high as its share of the wettest week', () => {
    const sheet = sheetOf(oneBed({ log: { weeks: { '2027-06-07': { rain: 1 }, '2027-06-14': { rain: 0.25 } } } }));
    const bars = ['2027-06-07', '2027-06-14', '2027-06-21'].map((at) =>
      classesOf(sheet.cellView(cellOf(sheet, 'rain', at)) as FigureView).find((name) => name.startsWith('runnel-bar-')),
    );
    // 24 steps; what rain the normals give for the third week is little, and shows.
    expect(bars).toEqual(['runnel-bar-24', 'runnel-bar-6', 'runnel-bar-1']);
  });

  it('is in the plan’s unit', () => {
    expect(viewOf(metricGarden(), 'eto', '2027-06-03').main).toMatch(/^\d\d\.\d$/);
  });
});

describe('totals', () => {
  it('of weeks and of zones come to the same season', () => {
    const sheet = sheetOf();
    sheet.show({ measure: 'volume' });
    const total = Number(sheet.value(cellOf(sheet, 'total', 'season')));
    const zones = ['beds', 'containers'].map((row) => Number(sheet.value(cellOf(sheet, row, 'season'))));
    expect(zones[0] as number).toBeGreaterThan(0);
    expect((zones[0] as number) + (zones[1] as number)).toBeCloseTo(total, 6);
    expect(gardenSeason(sheet.state.season).litres / 3.785411784).toBeCloseTo(total, 6);
  });
});

describe('a name', () => {
  const nameOf = (row: string) => {
    const sheet = sheetOf();
    return sheet.cellView(cellOf(sheet, row, 'name')) as NameView;
  };

  it('of a zone says its watering days and can unfold', () => {
    const detail = words.detail.daysAWeek(sheetOf().format, 3, 3);
    expect(nameOf('beds')).toMatchObject({ name: 'Beds', detail, isOpen: true, foldLabel: words.plantingsOf('Beds') });
  });

  it('of a planting says what it is and whether it has a shut-off', () => {
    expect(nameOf('shrubs').detail).toBe(words.detail.withShutOff(nameOf('shrubs').detail.split(',')[0] ?? ''));
    expect(nameOf('tomatoes').detail).not.toContain(words.detail.withShutOff(''));
    expect(nameOf('shrubs').isOpen).toBeUndefined();
  });

  it('of the total names its unit', () => {
    expect(nameOf('total')).toMatchObject({ name: words.rows.total, detail: words.detail.unit('gal') });
  });
});
