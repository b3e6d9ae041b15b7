import { describe, expect, it } from 'vitest';
import type { UnitSystem } from '../../src/engine/units.ts';
import { describeRemedy, describeRemedyEffects } from '../../src/language/describe-remedy.ts';
import { readerFor } from '../../src/language/reader.ts';
import { applyEdit } from '../../src/plan/edits/apply-edit.ts';
import type { Remedy, RemedyKind } from '../../src/remedies/notices/remedy.ts';
import { noticed } from '../support/noticed.ts';
import { longLine, TROUBLES } from '../support/troubled-plans.ts';

const plain = (text: string) => text.replaceAll('\u00a0', ' ').replaceAll('\u2060', '');

/** Every remedy of every trouble, described. */
function described(units: UnitSystem) {
  return TROUBLES.flatMap(([kind, planOf]) => {
    const plan = units === 'us' ? planOf() : applyEdit(planOf(), { type: 'convert-units', units });
    const { notice, remedies } = noticed(plan, kind);
    return remedies.map((remedy) => {
      const reader = readerFor('en-US', units);
      return {
        ...{ trouble: kind, kind: remedy.kind, remedy },
        change: plain(describeRemedy(remedy, reader)),
        effect: describeRemedyEffects(remedy, notice, reader).map(plain),
      };
    });
  });
}

const IN_US = described('us');
const IN_METRIC = described('metric');
const ALL_KINDS: readonly RemedyKind[] = [
  ...([
    'close-loop',
    'closer-spacing',
    'cut-in-two',
    'days-by-month',
    'feed-middle',
    'fewer-minutes',
    'keep-watered',
    'larger-tank',
  ] as const),
  ...(['more-days', 'more-starts', 'other-days', 'other-emitters', 'other-runs', 'own-zone', 'shut-off'] as const),
  ...(['smaller-step', 'split-zone', 'uphill', 'wider-spacing'] as const),
];

describe('what a remedy changes', () => {
  it.each([
    ['us', IN_US],
    ['metric', IN_METRIC],
  ] as const)('is said of every kind in %s units, with no figure or name missing', (_, all) => {
    expect([...new Set(all.map(({ kind }) => kind))].sort()).toEqual(ALL_KINDS);
    for (const { kind, change, effect } of all) {
      expect([kind, change, ...effect].join(' ')).not.toMatch(/NaN|undefined|Infinity|–|^ | {2}/);
      expect(change).toMatch(/^[A-Z].*[^.]$/);
      expect(effect.every((sentence) => /^[A-Z\d].*\.$/.test(sentence))).toBe(true);
    }
  });

  it.each([
    ['line-too-long', 'close-loop', /^Close the line of Tomatoes into a loop/],
    ['line-too-long', 'feed-middle', /^Feed the line of Tomatoes in its middle: 2 runs of 300 ft$/],
    ['line-too-long', 'cut-in-two', /^Split Tomatoes in two: add valve “Beds 2” for half of it$/],
    ['flow-too-great', 'split-zone', /^Split Beds in two: add valve “Beds 2” for Peppers$/],
    ['flow-together', 'other-days', /^Water on other days: North and Middle on Mon and Wed; South on Tue and Thu$/],
    ['window-too-short', 'more-days', /^Water on 3 days a week, less on each: One on Mon, Tue, and Thu$/],
    ['window-too-short', 'fewer-minutes', /^Water less in 1 week: cut 4 min from One and Two$/],
    ['tank-dry', 'larger-tank', /^Set up a tank of 169 gal instead of 60 gal$/],
    ['emitters-far-apart', 'closer-spacing', /^Re-lay Tomatoes with an emitter every 12 in$/],
    ['line-downhill', 'uphill', /^Move the line of Tomatoes to the uphill side of the plants$/],
    ['beyond-timer', 'more-starts', /^Let the timer start Beds up to 7 times a day$/],
    ['step-too-long', 'smaller-step', /^Use a timer for Beds that can be set in steps of 5 min$/],
    ['shut-off-short', 'other-emitters', /^Shrubs: 3 emitters \(2 gph\) per plant$/],
    ['few-days', 'days-by-month', /^Water Beds on \d days a week in [A-Z]/],
    ['too-long', 'other-runs', /^Lay 5 rows of line in Tomatoes instead of 4$/],
    ['over', 'shut-off', /^Put a shut-off in front of Sage$/],
    ['over', 'own-zone', /^Split the zone in two: add valve “Beds 2” for Sage$/],
  ] as const)('%s: %s', (trouble, kind, words) => {
    expect(IN_US.find((each) => each.trouble === trouble && each.kind === kind)?.change).toMatch(words);
  });

  it.each([
    [
      { kind: 'wider-spacing', plantingId: 'tomatoes', spacingM: 0.4572 },
      'Re-lay Tomatoes with an emitter every 18 in',
    ],
    [
      { kind: 'keep-watered', plantingId: 'tomatoes' },
      'Water Tomatoes a little every week instead of deep and infrequently',
    ],
    [
      {
        kind: 'own-zone-and-days',
        change: { kind: 'cut', newZoneId: 'beds-2', newZoneName: 'Beds 2', moved: ['tomatoes'] },
        wateringDays: [{ zoneId: 'beds-2', weekdays: ['tue', 'fri'] }],
      },
      'Split the zone in two: add valve “Beds 2” for Tomatoes, and water beds-2 on Tue and Fri',
    ],
    [
      { kind: 'no-shut-off', plantingId: 'tomatoes' },
      'Take out the shut-off of Tomatoes, so that it is watered with the zone',
    ],
    [
      { kind: 'more-room', plantingId: 'tomatoes', targetDepletion: 0.3 },
      'Water Tomatoes less full: set its target depletion to 30%',
    ],
    [
      { kind: 'zone-rule', change: { kind: 'rule', rule: { kind: 'thirstiest' } } },
      'Let the thirstiest planting set the minutes',
    ],
    [
      { kind: 'shut-weeks', plantingIds: ['tomatoes', 'sage'], weeks: 2 },
      'Shut Tomatoes and sage off in 2 weeks, each with a shut-off of its own',
    ],
    [
      {
        kind: 'together',
        parts: [
          { kind: 'smaller-step', zoneId: 'beds', timerStepMinutes: 1 },
          { kind: 'minutes-as-now', zoneIds: ['beds'], weeks: 1 },
        ],
      },
      'Use a timer for Beds that can be set in steps of 1 min. Leave Beds at the same minutes as now in 1 week',
    ],
  ] as const)('%o', (change, words) => {
    const [remedy = expect.unreachable()] = noticed(longLine(), 'line-too-long').remedies;
    const made: Remedy = { ...remedy, ...change };
    expect(plain(describeRemedy(made, readerFor('en-US', 'us')))).toBe(words);
  });

  it('is in the plan’s own units', () => {
    const metric = (kind: RemedyKind) => IN_METRIC.find((each) => each.kind === kind)?.change;
    expect(metric('feed-middle')).toMatch(/2 runs of 91\.4 m$/);
    expect(metric('closer-spacing')).toMatch(/every 30 cm$/);
    expect(metric('larger-tank')).toMatch(/^Set up a tank of 639 L instead of 227 L$/);
  });

  it('takes any name as it is written', () => {
    const name = '<img src=x onerror=alert(1)> $& {0}';
    const { remedies } = noticed(longLine({ name }), 'line-too-long');
    for (const remedy of remedies) {
      expect(describeRemedy(remedy, readerFor('en-US', 'us'))).toContain(name);
    }
  });
});

describe('what it comes to', () => {
  const effectOf = (kind: RemedyKind) => IN_US.find((each) => each.kind === kind)?.effect;

  it('is first of all whether the trouble goes', () => {
    for (const { remedy, effect } of [...IN_US, ...IN_METRIC]) {
      if (remedy.remaining === 0) expect(effect[0]).toBe('Fixes this.');
      else expect(effect[0]).toMatch(/^[1-9]\d*% of the problem remains\.$/);
    }
    expect(IN_US.some(({ remedy }) => remedy.remaining > 0)).toBe(true);
  });

  it('is the pressure at the weakest emitter where that is the trouble', () => {
    expect(effectOf('close-loop')).toContain('Then 14.2 psi at its weakest emitter instead of 0.8 psi.');
    expect(effectOf('uphill')?.join(' ')).not.toContain('psi');
  });

  it('is what a trade saves, and what it costs whom', () => {
    const { notice, remedies } = noticed(longLine(), 'line-too-long');
    const [remedy = expect.unreachable()] = remedies;
    const trade = { savedLitres: 22.712, lostLitres: 7.571, plantingIds: ['tomatoes'] };
    const effect = describeRemedyEffects(
      { ...remedy, unmetLitresMore: 7.571, trade },
      notice,
      readerFor('en-US', 'us'),
    );
    expect(plain(effect.at(-1) ?? '')).toBe('Saves 6 gal past the roots, and costs Tomatoes 2 gal of what they need.');
    expect(effect.join(' ')).not.toContain('go short');
  });

  it('is water and minutes over the season, more or less or as now', () => {
    expect(effectOf('uphill')?.[1]).toBe('Same water and minutes as now.');
    // Half of the bed by itself takes as many minutes as the whole did; its shorter line has more pressure, so that it gives more.
    expect(effectOf('cut-in-two')?.[1]).toMatch(/^Over the season: [\d.]+ gal (?:more|less), \d+ min (?:more|less)\.$/);
    expect(effectOf('fewer-minutes')?.[1]).toMatch(/^Over the season: [\d.]+ gal less, 4 min less\.$/);
  });

  it('is what plants go short by', () => {
    const allowance = IN_US.find(({ trouble }) => trouble === 'allowance-exceeded');
    expect(allowance?.effect.at(-1)).toMatch(/^The shortage grows by [\d.]+ gal\.$/);
  });
});
