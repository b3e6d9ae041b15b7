/** A table of everything: what it says of each week, and that it comes back without a change. Read by papaparse, as a spreadsheet would. */
import fc from 'fast-check';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { plantingFigure, plantingState } from '../../../src/engine/season/planting-week.ts';
import type { Season } from '../../../src/engine/season/season.ts';
import { zoneFigure, zoneOrigin, zoneState } from '../../../src/engine/season/zone-week.ts';
import { ALL_FIGURES } from '../../../src/exchange/csv/season-figures.ts';
import { type CsvChoice, seasonToCsv } from '../../../src/exchange/csv/season-to-csv.ts';
import { tableFromCsv } from '../../../src/exchange/csv/table-from-csv.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { arbitraryPlan } from '../../support/arbitrary-plan.ts';
import { oneRow, potWith } from '../../support/troubled-plans.ts';
import { plan as mixed } from './mixed-season.ts';

const everything = (plan: Plan): CsvChoice => ({
  units: plan.units,
  measures: ALL_FIGURES,
  withPlantings: true,
  withRecords: true,
});

function tableOf(season: Season, choice: CsvChoice) {
  const { data } = Papa.parse<string[]>(seasonToCsv(season, choice), { skipEmptyLines: true });
  return (zone: string, planting: string, measure: string): string[] => {
    const found = data.find((row) => row[0] === zone && row[1] === planting && row[2] === measure);
    if (found === undefined) throw new Error(`no row ${zone}, ${planting}, ${measure}`);
    return found.slice(4);
  };
}

const plain = (cell = '') => cell.replaceAll('\u00a0', ' ');

const L_PER_GALLON = 3.785411784;
const MM_PER_INCH = 25.4;
const WIDTH_FT = 3;

const plan: Plan = {
  ...mixed,
  log: {
    ...mixed.log,
    weeks: { ...mixed.log?.weeks, '2027-06-07': { rain: 0.75 } },
    // A wet week: on some of its mornings nobody needs water.
    days: Object.fromEntries([12, 13, 14, 15, 16, 17].map((day) => [`2027-07-${day}`, { rain: 1 }])),
    runs: { beds: { '2027-06-14': 40 } },
  },
  choices: {
    beds: { '2027-06-21': { minutes: 33, note: '=Look, "here"\nand there' }, '2027-06-28': { closed: true } },
  },
};
const season = computeSeason(plan);
const { firstDay } = season.garden.span;

describe('a table of everything', () => {
  const row = tableOf(season, { ...everything(plan), today: firstDay + 84 });

  it('has the rain and the reference ET of each week, and their sums', () => {
    const rain = row('', '', 'Rain').map(Number);
    const eto = row('', '', 'Reference ET').map(Number);
    expect(rain[9]).toBeCloseTo(0.75, 6);
    for (let week = 0; week < 30; week += 1) {
      const days = season.weather.eto.mm.subarray(7 * week, 7 * week + 7);
      expect(eto[week]).toBeCloseTo(days.reduce((sum, day) => sum + day, 0) / MM_PER_INCH, 3);
    }
    expect(eto[30]).toBeCloseTo(
      eto.slice(0, 30).reduce((sum, week) => sum + week, 0),
      2,
    );
  });

  it('says where the rain and the reference ET of each week come from, and what a service filled in comes back as that', () => {
    expect(plain(row('', '', 'Where the rain comes from')[9])).toBe('total of the week: 7 days');
    expect(plain(row('', '', 'Where the rain comes from')[14])).toBe('typed: 6 days, usual weather: 1 day');
    const days = {
      '2027-07-12': { rain: 0.3, eto: 0.2, source: 'service' },
      '2027-07-13': { rain: 0.1, minTemperature: 50, maxTemperature: 70, source: { rain: 'file' } },
      '2027-07-14': { rain: 0.2, eto: 0.2 },
      '2027-07-15': { eto: 0.2, source: 'estimate' },
    } as const;
    const filled: Plan = { ...mixed, log: { days } };
    const made = computeSeason(filled);
    const of = tableOf(made, everything(filled));
    expect(plain(of('', '', 'Where the rain comes from')[14])).toBe(
      'typed: 1 day, file: 1 day, weather service: 1 day, usual weather: 4 days',
    );
    expect(plain(of('', '', 'Where the reference ET comes from')[14])).toBe(
      'typed: 1 day, weather service: 1 day, estimate over a gap: 1 day, low and high: 1 day, usual weather: 3 days',
    );
    const back = tableFromCsv(seasonToCsv(made, everything(filled)), { plan: filled, season: made });
    expect(back).toMatchObject({ edit: undefined, changes: [], faults: [] });
  });

  it('has what each zone and planting uses, needs and loses', () => {
    for (const zone of season.zones) {
      const { name } = zone.zone;
      const [demand, needed, received, drained] = [
        'Water that the plants use',
        'Needed at the roots',
        'Irrigation kept',
        'Drained past the roots',
      ].map((measure) => row(name, '', measure)) as [string[], string[], string[], string[]];
      for (let week = 0; week < 30; week += 1) {
        if (zoneState(zone, week) === 'off') continue;
        expect(Number(demand[week])).toBeCloseTo(zoneFigure(zone, 'demandLitres', week) / L_PER_GALLON, 2);
        expect(Number(needed[week])).toBeCloseTo(zoneFigure(zone, 'neededLitres', week) / L_PER_GALLON, 2);
        expect(Number(received[week])).toBeCloseTo(zoneFigure(zone, 'irrigationStayedLitres', week) / L_PER_GALLON, 2);
        expect(Number(drained[week])).toBeCloseTo(zoneFigure(zone, 'drainedLitres', week) / L_PER_GALLON, 2);
      }
      for (const planting of zone.plantings) {
        const own = row(name, planting.planting.name, 'Water that the plants use');
        own.slice(0, 30).forEach((value, week) => {
          if (plantingState(planting, week) === 'off') expect(value).toBe('');
          else expect(Number(value)).toBeCloseTo(plantingFigure(planting, 'demandLitres', week) / L_PER_GALLON, 2);
        });
      }
    }
  });

  it('is read again under the names that some of its rows had before', () => {
    const text = seasonToCsv(season, everything(plan));
    const older = text
      .replaceAll(',Irrigation kept,', ',Irrigation that stays at the roots,')
      .replaceAll(',Needed at the roots,', ',Irrigation needed,')
      .replace(/^(Beds,,Minutes to run,min,)[^,]+/m, '$133');
    expect(older).not.toBe(text);
    const changes = [{ zone: 'Beds', to: 33 }];
    expect(tableFromCsv(older, { plan, season })).toMatchObject({ kind: 'minutes', changes, faults: [] });
  });

  it('leaves a cell empty where nothing is in the ground, and writes 0 where nothing is run', () => {
    let off = 0;
    let rests = 0;
    for (const zone of season.zones) {
      row(zone.zone.name, '', 'Minutes to run')
        .slice(0, 30)
        .forEach((value, week) => {
          const isOff = zoneState(zone, week) === 'off' && zoneOrigin(zone, week) === 'computed';
          off += Number(isOff);
          rests += Number(value === '0');
          expect(value === '').toBe(isOff);
        });
      for (const { planting } of zone.plantings)
        off += row(zone.zone.name, planting.name, 'State')
          .slice(0, 30)
          .filter((state) => state === '').length;
    }
    expect(off).toBeGreaterThan(3);
    expect(rests).toBeGreaterThan(3);
  });

  it('says states, and of each run whether it was set by hand, really run, assumed, skipped or closed', () => {
    const states = row('Beds', '', 'State');
    const marks = row('Beds', '', 'Where the run comes from');
    expect(new Set(states.slice(0, 30))).toContain('Met');
    expect(marks[10]).toBe('really run');
    expect(marks[11]).toBe('set by hand');
    expect(marks[12]).toBe('closed');
    expect(states[12]).toBe('Closed');
    // The season's twelfth week is over on its 85th day, and the thirteenth is not.
    expect(marks.slice(0, 12).some((mark) => mark.startsWith('assumed as computed'))).toBe(true);
    expect(marks.slice(13).some((mark) => mark.includes('assumed'))).toBe(false);
    const zone = season.zones.find((each) => each.zone.id === 'beds') as (typeof season.zones)[number];
    const skipped = Array.from({ length: 30 }, (_, week) => week).filter(
      (week) => zoneFigure(zone, 'skippedMask', week) !== 0,
    );
    expect(skipped.length).toBeGreaterThan(0);
    for (const week of skipped) expect(marks[week]).toContain('skipped on ');
    const unmarked = tableOf(season, everything(plan))('Beds', '', 'Where the run comes from');
    expect(unmarked.some((mark) => mark.includes('assumed'))).toBe(false);
  });

  it('has the watering days and the flow of each week, and what a cut takes where there is one', () => {
    expect(() => row('Beds', '', 'Share that a cut takes')).toThrow('no row');
    const limited: Plan = {
      ...plan,
      supply: {
        sources: [{ name: 'Barrel', waterHeight: 3 }],
        restrictions: [{ from: '2027-08-02', to: '2027-08-15', weekdays: ['tue'] }],
        cuts: [{ from: '2027-07-05', to: '2027-07-18', share: 0.5 }],
      },
      zones: plan.zones.map((zone, at) => ({
        ...zone,
        ...(at === 0 ? { wateringDays: 3, wateringDaysByMonth: { 6: 5 } } : { cutExempt: true }),
        plantings: zone.plantings.map((planting) => ({
          ...planting,
          lines: planting.lines.map((line) =>
            line.kind === 'solid' ? line : { ...line, emitter: { kind: 'plain', exponent: 0.5 } as const },
          ),
        })),
      })),
    };
    const made = computeSeason(limited);
    const of = tableOf(made, everything(limited));
    const days = of('Beds', '', 'Watering days').map(Number);
    expect([days[0], days[9], days[17], days[20]]).toEqual([3, 5, 1, 3]);
    const [beds = expect.unreachable()] = made.zones;
    const flows = of('Beds', '', 'Flow while it runs');
    // A third of its label and less: 3 ft of water.
    const label = beds.zone.plantings.flatMap(({ lines }) => lines).reduce((sum, { flowLph }) => sum + flowLph, 0);
    const most = Math.max(...flows.map(Number));
    expect(most).toBeGreaterThan(0);
    expect(most).toBeLessThan((0.4 * label) / 60 / L_PER_GALLON);
    const shares = of('Beds', '', 'Share that a cut takes').map(Number);
    expect(shares[12]).toBe(0);
    expect(shares[13]).toBeGreaterThan(0);
    expect(
      of('Containers', '', 'Share that a cut takes')
        .slice(0, 30)
        .every((share) => share === '0'),
    ).toBe(true);
    expect(Number(of('', '', 'Water that a cut asks for')[13])).toBeGreaterThan(0);
    expect(Number(of('', '', 'Water that a cut could not take')[13])).toBe(
      Number(((made.cuts?.untakenLitres[13] ?? Number.NaN) / L_PER_GALLON).toFixed(3)),
    );
    const read = tableFromCsv(seasonToCsv(made, everything(limited)), { plan: limited, season: made });
    expect(read).toMatchObject({ kind: 'minutes', edit: undefined, changes: [], faults: [] });
  });

  it('has what of a bed’s ground is wetted and how deep, its mulch, its roots as they grow, and why it asks for nothing', () => {
    const bed = oneRow({
      need: {
        kind: 'crop',
        crop: 'tomato',
        plantedOn: '2027-05-10',
        stages: { initial: 30, development: 40, mid: 40, late: 25 },
      },
      wettedShare: 0.4,
      mulch: { kind: 'organic', cover: 0.8 },
      dryDownDays: 14,
      inGround: { to: '2027-07-04' },
    });
    const of = tableOf(computeSeason({ ...bed, supply: { sources: [], leachingFraction: 0.1 } }), everything(bed));
    const bedRow = (measure: string) => of('Beds', 'Tomatoes', measure);
    expect(bedRow('Wetted share')).toEqual(['0.4', '0.4', '0.4', '0.4', '']);
    expect(bedRow('Mulch')).toEqual([...Array(4).fill('organic, 80%'), '']);
    expect(bedRow('Leaching fraction')[0]).toBe('0.1');
    // FAO-56 ch. 8, roots of 0.15 m until day 30, of 30 in from day 70 on: the first week ends with day 35.
    expect(Number(bedRow('Root depth')[0])).toBeCloseTo((0.15 + (0.762 - 0.15) * (5 / 40)) / 0.0254, 3);
    // NEH 623 ch. 7 (from memory): even soil of medium texture, 3 ft at 2.5 ft for 1 gph; 0.9 gph wet a little less.
    expect(Number(bedRow('Width that an emitter wets')[0])).toBeCloseTo(WIDTH_FT * 0.9 ** 0.33, 3);
    const [depth = '', second = ''] = bedRow('Depth that a run wets');
    expect([Number(depth), Number(second)].every((inches) => inches > 0 && inches <= 30)).toBe(true);
    expect(bedRow('Why no water is asked for')).toEqual([
      '',
      '',
      'left to dry before harvest',
      'left to dry before harvest',
      '',
    ]);
    expect(() => bedRow('Volume of one container')).toThrow('no row');
  });

  it('has of each week what the lines wet that lie in it', () => {
    const line = (length: number) =>
      ({ kind: 'dripline', flow: 0.9, spacing: 12, layout: { kind: 'rows', rows: 1, length } }) as const;
    const laidAnew = oneRow({
      lines: [
        { ...line(8), to: '2027-06-20' },
        { ...line(4), from: '2027-06-21' },
      ],
    });
    const of = tableOf(computeSeason(laidAnew), everything(laidAnew));
    // A strip as wide as one emitter wets, of 32 sq ft, in hundredths.
    const share = (feet: number) => ((feet * WIDTH_FT * 0.9 ** 0.33) / 32).toFixed(2);
    expect(of('Beds', 'Tomatoes', 'Wetted share')).toEqual([share(8), share(8), share(4), share(4), '']);
  });

  it('has the volume of a container, and nothing of ground', () => {
    const pot = potWith();
    const of = tableOf(computeSeason(pot), everything(pot));
    expect(of('Pots', 'Pot', 'Volume of one container')).toEqual(['10', '10', '10', '']);
    for (const measure of ['Root depth', 'Wetted share', 'Depth that a run wets', 'Mulch']) {
      expect(() => of('Pots', 'Pot', measure)).toThrow('no row');
    }
  });

  it('has the notes as they were typed, none of them a formula', () => {
    expect(row('Beds', '', 'Note')[11]).toBe('\'=Look, "here"\nand there');
    expect(() => row('Containers', '', 'Note')).toThrow('no row');
  });
});

describe('a table of everything, imported', () => {
  it('reports no change, for 200 random plans', () => {
    let figures = 0;
    fc.assert(
      fc.property(arbitraryPlan({ mostZones: 3, mostWeeks: 12 }), (drawn) => {
        // Two zones of one name cannot be told apart, and are refused.
        const random = {
          ...drawn,
          zones: drawn.zones.map((zone, at) => ({ ...zone, name: `${at} ${zone.name}`.slice(0, 120) })),
        };
        const computed = computeSeason(random);
        const text = seasonToCsv(computed, { ...everything(random), today: computed.garden.span.firstDay + 40 });
        const read = tableFromCsv(text, { plan: random, season: computed });
        figures += random.zones.length * random.season.weeks;
        if (random.zones.length === 0) return;
        expect(read).toMatchObject({ kind: 'minutes', asked: [], edit: undefined, changes: [], faults: [] });
      }),
      { numRuns: 200, seed: 21 },
    );
    expect(figures).toBeGreaterThan(1000);
  }, 60_000);

  it('reports the one figure that was changed in it', () => {
    const text = seasonToCsv(season, everything(plan));
    const { data } = Papa.parse<string[]>(text, { skipEmptyLines: true });
    const minutes = data.find((row) => row[0] === 'Beds' && row[1] === '' && row[2] === 'Minutes to run') as string[];
    minutes[4 + 20] = '75';
    const read = tableFromCsv(Papa.unparse(data), { plan, season });
    expect(read).toMatchObject({ kind: 'minutes', faults: [], changes: [{ zone: 'Beds', to: 75 }] });
  });
});
