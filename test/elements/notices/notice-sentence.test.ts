import { expect, it } from 'vitest';
import { noticeSentence } from '../../../src/elements/notices/notice-sentence.ts';
import { NOTICE_SENTENCES } from '../../../src/elements/shared/words/notice-sentences.ts';
import type { NoticeKind } from '../../../src/explain/notices/notice.ts';
import { noticesOf } from '../../../src/explain/notices/notices-of.ts';
import { readerFor } from '../../../src/language/reader.ts';
import { computeSeason } from '../../../src/plan/compute-season.ts';
import { emptyPlan } from '../../../src/plan/empty-plan.ts';
import type { Plan } from '../../../src/plan/schema/plan-schema.ts';
import { noticeOf } from '../../support/notices.ts';
import { mixedGarden, oneBed, shrubs, tomatoes, zone } from '../../support/small-plans.ts';

const reading = readerFor('en', 'us');
const LITRES_PER_GALLON = 3.785411784;
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

it.each([
  [
    'dry',
    { unmetLitres: 12 * LITRES_PER_GALLON, shortDays: 5 },
    'dry. Short of water on 5 days, by 12 gal of what the plants would use.',
  ],
  ['short', { unmetLitres: 2 * LITRES_PER_GALLON, shortDays: 1 }, 'short of water on 1 day, by 2 gal.'],
  ['short', { unmetLitres: 0, shortDays: 0 }, 'not brought back to its target.'],
  [
    'too-long',
    { minutesPerDay: 300, windowMinutes: 240 },
    '300 min a watering day, longer than the 240 min in which water may run.',
  ],
  [
    'too-long',
    { minutesPerDay: 1500, windowMinutes: 1440 },
    '25 hours a watering day, longer than the 24 hours in which water may run.',
  ],
  [
    'over',
    { drainedLitres: 30 * LITRES_PER_GALLON, appliedLitres: 100 * LITRES_PER_GALLON, drainedShare: 0.3 },
    '30 gal of the 100 gal given drains below the roots, 30%.',
  ],
] as const)('says of %s with %o: %s', (kind, figures, words) => {
  expect(plain(noticeSentence(noticeOf(kind, { figures }), { zones: [] }, reading))).toBe(words);
});

/** Plans that between them give every kind of notice. */
const TROUBLED: readonly Plan[] = [
  oneBed({ zones: [zone({ plantings: [tomatoes({ lines: [] })] })] }),
  oneBed({
    site: { ...oneBed().site, climate: emptyPlan({ units: 'us', firstDay: '2027-06-07', weeks: 4 }).site.climate },
  }),
  oneBed({ choices: { beds: { '2027-06-07': { minutes: 1 }, '2027-06-14': { minutes: 9000 } } } }),
  mixedGarden({
    choices: {
      beds: { '2027-07-05': { closed: true }, '2027-07-12': { closed: true }, '2027-07-19': { closed: true } },
    },
    supply: { sources: [], window: { hoursPerDay: 0.2 } },
  }),
  oneBed({
    zones: [
      zone({
        plantings: [
          tomatoes({
            need: { kind: 'crop', crop: 'tomato', plantedOn: '2027-06-21' },
            inGround: { from: '2027-06-07' },
          }),
        ],
      }),
    ],
  }),
  oneBed({ zones: [zone({ plantings: [tomatoes({ inGround: { from: '2028-01-01', to: '2028-02-01' } })] })] }),
  oneBed({
    zones: [
      zone({ plantings: [tomatoes(), shrubs({ shutOff: false })], rule: { kind: 'planting', planting: 'shrubs' } }),
    ],
  }),
  mixedGarden({
    supply: {
      sources: [{ name: 'Hose bib', flow: { kind: 'typed', flow: 0.7 }, pressure: 10 }],
      window: { weekdays: ['mon'], hoursPerDay: 0.5 },
      allowance: { perWeek: 20, perSeason: 100 },
      tank: { capacity: 30, start: 30 },
    },
    zones: mixedGarden().zones.map((each) => ({ ...each, wateringDays: ['mon'] })),
  }),
  mixedGarden({
    supply: {
      sources: [{ name: 'Hose bib', flow: { kind: 'typed', flow: 1.5 }, pressure: 2 }],
      tank: { capacity: 30, start: 30, roofArea: 50 },
    },
    zones: [
      zone({
        soil: 'sand',
        slopePercent: 8,
        plantings: [
          tomatoes({
            lines: [
              {
                kind: 'dripline',
                flow: 0.9,
                spacing: 24,
                layout: { kind: 'rows', rows: 1, length: 900 },
                slopeSide: 'downhill',
              },
            ],
          }),
          shrubs({ watering: 'refill', rootDepth: 4 }),
        ],
      }),
      zone({ id: 'other', name: 'Other' }),
    ],
  }),
  oneBed({
    supply: { sources: [{ name: 'Hose bib', flow: { kind: 'typed', flow: 1.5 }, pressure: 20 }] },
    zones: [
      zone(),
      zone({ id: 'other', name: 'Other' }),
      zone({
        id: 'early',
        name: 'Early',
        plantings: [
          tomatoes({
            need: {
              kind: 'crop',
              crop: 'strawberries',
              plantedOn: '2027-06-07',
              stages: { initial: 5, development: 5, mid: 5, late: 5 },
            },
            lines: [{ kind: 'dripline', flow: 0.3, spacing: 12, layout: { kind: 'length', length: 2500 } }],
          }),
        ],
      }),
    ],
  }),
];

it('finds every figure that its sentence speaks of in the engine’s notices', () => {
  const found = new Set<NoticeKind>();
  for (const season of TROUBLED.map((plan) => computeSeason(plan))) {
    for (const notice of noticesOf(season)) {
      found.add(notice.kind);
      const words = noticeSentence(notice, season, reading);
      expect(words, `${notice.kind} ${JSON.stringify(notice.figures)}`).not.toMatch(/NaN|undefined|Infinity|–/);
    }
  }
  expect([...found].sort()).toEqual(Object.keys(NOTICE_SENTENCES).sort());
});
