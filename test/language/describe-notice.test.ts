import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { NoticeFigures, NoticeKind, NoticeSubject } from '../../src/explain/notices/notice.ts';
import { NOTICE_KINDS } from '../../src/explain/notices/notice-kinds.ts';
import { noticesOf } from '../../src/explain/notices/notices-of.ts';
import { describeNotice } from '../../src/language/describe-notice.ts';
import { readerFor } from '../../src/language/reader.ts';
import { computeSeason } from '../../src/plan/compute-season.ts';
import { emptyPlan } from '../../src/plan/empty-plan.ts';
import type { Plan } from '../../src/plan/schema/plan-schema.ts';
import { arbitraryPlan } from '../support/arbitrary-plan.ts';
import { noticeOf } from '../support/notices.ts';
import { mixedGarden, oneBed, shrubs, tomatoes, zone } from '../support/small-plans.ts';
import { potWith } from '../support/troubled-plans.ts';

const season = computeSeason(mixedGarden());
const plain = (text: string) => text.replaceAll('\u00a0', ' ').replaceAll('\u2060', '');

/** Of US readers unless told otherwise. */
function described(kind: NoticeKind, of: Parameters<typeof noticeOf>[1], locale = 'en-US') {
  const { name, sentence, where } = describeNotice(noticeOf(kind, of), season, 'Mixed garden', readerFor(locale, 'us'));
  return { name, sentence: plain(sentence), where: plain(where) };
}

const gal = (gallons: number) => gallons * 3.785411784;
const gpm = (gallons: number) => gallons * 3.785411784;
const ft = (feet: number) => feet * 0.3048;
const inches = (count: number) => count * 0.0254;
const psi = (pounds: number) => pounds * 6.894757293168361;

const shortage = (gallons: number, shortDays: number, neededGallons = 12) => ({
  unmetLitres: gal(gallons),
  demandLitres: gal(20),
  neededLitres: gal(neededGallons),
  netLitres: 0,
  missingLitres: 0,
  shortDays,
  dryWeeks: 0,
});

const SHORT = 'short of water on 23 days: 1.7 gal, 9% of what it uses.';

const line = {
  runLengthM: ft(600),
  longestRunM: ft(325),
  runs: 1,
  inletPressureKpa: psi(30),
  endPressureKpa: psi(0.8),
  leastPressureKpa: psi(0.8),
  neededPressureKpa: psi(10),
  flowVariation: 0.5,
  uniformity: 0.8,
  dryShare: 0,
  velocityMs: 1,
  beyondBounds: 0.5,
};

const tank = {
  drawnLitres: gal(900),
  mainsLitres: gal(300),
  overflowLitres: 0,
  capacityLitres: gal(60),
  firstDryDay: 3,
};

/** Of every kind, and of every form that its sentence has. */
type Sentence = { readonly [Kind in NoticeKind]: readonly [Kind, NoticeFigures[Kind], string] }[NoticeKind];

const SENTENCES: readonly Sentence[] = [
  [
    'no-climate',
    { etoMonths: 0, temperatureMonths: 0, days: 140, otherDays: 0 },
    'its climate is not filled in yet, so nobody can say what plants use. No minutes here does not mean that they need no water.',
  ],
  [
    'no-climate',
    { etoMonths: 11, temperatureMonths: 0, days: 21, otherDays: 119 },
    'reference ET is 0 on 21 days, as if plants used no water. Right while the ground is frozen; otherwise a month is missing.',
  ],
  [
    'no-climate',
    { etoMonths: 9, temperatureMonths: 0, days: 70, otherDays: 0 },
    'reference ET is 0 on 70 days, as if plants used no water. Right while the ground is frozen; otherwise a month is missing.',
  ],
  [
    'no-climate',
    { etoMonths: 0, temperatureMonths: 12, days: 140, otherDays: 0 },
    'reference ET is 0 on 140 days: its temperatures give none. Right where it is that cold; otherwise a temperature is wrong.',
  ],
  ['no-line', shortage(3, 2), 'no line brings the 12 gal of irrigation that it needs.'],
  ['too-long', { minutesPerDay: 300, windowMinutes: 240 }, 'needs 5 h a watering day; water may run for 4 h.'],
  ['too-long', { minutesPerDay: 1500, windowMinutes: 1440 }, 'needs 25 h a watering day; water may run for 24 h.'],
  ['no-line', shortage(1.7, 23, 0), `${SHORT} No line brings it water.`],
  ['short', shortage(2, 1), 'short of water on 1 day: 2 gal, 10% of what it uses.'],
  ['short', shortage(0.02, 1), 'drier than planned, but not short of water.'],
  ['short', shortage(0.1, 1), 'short of water on 1 day: 0.1 gal, 1% of what it uses.'],
  ['short', shortage(0, 0), 'drier than planned, but not short of water.'],
  ['closed', shortage(1.7, 23), `${SHORT} The zone is closed by hand.`],
  ['short-by-hand', shortage(1.7, 23), `${SHORT} Minutes or open days that were set by hand are too few.`],
  ['short-as-run', shortage(1.7, 23), `${SHORT} What was run was too little.`],
  ['cut-short', shortage(1.7, 23), `${SHORT} Its zone gave up water in these weeks.`],
  [
    'cut-not-met',
    { askedLitres: 900, untakenLitres: 200, worstWeekLitres: 151.4 },
    'the cut asks for up to 40 gal a week more than its zones can give up.',
  ],
  ['restricted', shortage(1.7, 23), `${SHORT} A watering restriction leaves no day on which water may run.`],
  [
    'beyond-timer',
    { ...shortage(1.7, 23), minutesAsked: 109, mostMinutes: 40, startsADay: 4, cycleMinutes: 10 },
    `${SHORT} The zone needs 109 min a watering day; its timer can run 40 min: 4 starts of at most 10 min, since more would run off.`,
  ],
  [
    'beyond-timer',
    { ...shortage(1.7, 23), minutesAsked: 2200, mostMinutes: 1440, startsADay: 4 },
    `${SHORT} The zone needs 37 h a watering day; its timer can run 24 h.`,
  ],
  [
    'shut-off-short',
    { ...shortage(1.7, 23), minutesAsked: 26, minutesPerDay: 15 },
    `${SHORT} Needs 26 min a watering day behind its shut-off; the zone runs 15 min.`,
  ],
  [
    'shut-off-short',
    { ...shortage(1.7, 23), minutesAsked: 0, minutesPerDay: 0 },
    `${SHORT} A deep watering is due, and the zone runs too little for it.`,
  ],
  [
    'left-behind',
    { ...shortage(1.7, 23), minutesAsked: 90, minutesPerDay: 66 },
    `${SHORT} Needs 90 min a watering day; by its rule the zone runs 66 min.`,
  ],
  [
    'few-days',
    { ...shortage(1.7, 23), fewestDays: 2, mostDays: 2 },
    `${SHORT} The soil dries out between waterings on 2 days a week.`,
  ],
  [
    'few-days',
    { ...shortage(1.7, 23), fewestDays: 1, mostDays: 3 },
    `${SHORT} The soil dries out between waterings on 1 to 3 days a week.`,
  ],
  [
    'few-days',
    { ...shortage(1.7, 23), fewestDays: 7, mostDays: 7 },
    `${SHORT} The soil dries out within a day, though it is watered every day.`,
  ],
  [
    'pot-dries-out',
    { heldLitres: 1.5, usedLitres: 2.375, hours: 24, runsADay: 1, wateringDays: 7 },
    'this pot cannot last from one watering to the next: it holds 0.4 gal that plants draw with ease, and they use 0.6 gal in 24 h. Watered 1 × a day, 7 days a week.',
  ],
  [
    'wetted-too-little',
    { wettedShare: 0.72, wantedShare: 0.8, widthM: 0.884, apartM: 1.22 },
    'its rows stand too far apart: about 48 in, and one wets 34.8 in across. Only 72% of the bed gets water.',
  ],
  [
    'wetted-too-little',
    { wettedShare: 0.36, wantedShare: 0.5, widthM: 0.73 },
    'too few emitters for its crowns: they wet 36% of the ground; at least 50% is good practice. One wets 28.7 in across at the roots.',
  ],
  ['dry-spell', shortage(1.7, 23), `${SHORT} The days were hotter or drier than expected.`],
  ['crop-early', { daysEarly: 7 }, '7 days in the ground before its planting day, with no water planned.'],
  ['crop-past', { daysPast: 1 }, '1 day in the ground after its last growth stage, with no water planned.'],
  ['out-of-season', { daysBefore: 3, daysAfter: 0 }, 'in the ground on no day of this season, so never watered.'],
  [
    'over',
    { drainedLitres: gal(30), appliedLitres: gal(100), drainedShare: 0.3, seasonLitres: gal(500) },
    '30% of its water is too much and drains past the roots: 30 gal of 100 gal.',
  ],
  [
    'over-by-hand',
    { drainedLitres: gal(30), appliedLitres: gal(100), drainedShare: 0.3, seasonLitres: gal(500) },
    '30% of its water is too much and drains past the roots: 30 gal of 100 gal. More was set by hand than computed.',
  ],
  [
    'step-too-long',
    { timerStepMinutes: 30, longestCycleMinutes: 3.3 },
    'the timer’s shortest run is 30 min; water runs off after 3.3 min.',
  ],
  ['hand-set', { minutes: 480, computedMinutes: 1500 }, 'set by hand to 8 h in all; computed: 25 h.'],
  [
    'line-too-long',
    line,
    'its line runs 600 ft; its pressure carries 325 ft. 30 psi at its start, 0.8 psi at its weakest emitter.',
  ],
  ['pressure-low', line, '30 psi at the start of its line is too low even for the first emitter.'],
  [
    'flow-below-label',
    { flowLph: gpm(2.04 / 60) * 60, labelLph: gpm(8 / 60) * 60, pressureKpa: 1.3 * 6.894_757 },
    'its lines give 2.04 gph at 1.3 psi; their label says 8 gph. Its minutes count on what they give.',
  ],
  [
    'flow-too-fast',
    { velocityMs: 2.377, limitMs: 1.524, flowLph: gpm(6) * 60, insideDiameterMm: 14.224, widerDiameterMm: 17.77 },
    '6 gpm through a tube of 0.56 in runs 7.8 ft a second; it should run no more than 5 ft. It takes one of 0.7 in inside.',
  ],
  [
    'flow-too-great',
    { flowLpm: gpm(2.1), sourceLpm: gpm(1.5), excessLpm: gpm(0.6) },
    'needs 2.1 gpm; the supply gives 1.5 gpm.',
  ],
  [
    'window-too-short',
    { minutesNeeded: 600, windowMinutes: 480, minutesOver: 120, days: 12, minutesOverInAll: 900, minutesInAll: 9000 },
    'on 12 days watering takes up to 10 h, soak time included; you have 8 h.',
  ],
  [
    'window-too-short',
    { minutesNeeded: 110, windowMinutes: 0, minutesOver: 110, days: 1, minutesOverInAll: 110, minutesInAll: 2200 },
    'on 1 day watering is planned, but no water may run.',
  ],
  [
    'tank-dry',
    { ...tank, sizeLitres: gal(180) },
    'the tank of 60 gal runs dry; 300 gal must come from elsewhere. One of 180 gal would last.',
  ],
  [
    'tank-dry',
    { ...tank, missingLitres: gal(250) },
    'the tank of 60 gal runs dry; 300 gal must come from elsewhere. Even the largest tank leaves you 250 gal short.',
  ],
  [
    'allowance-exceeded',
    { usedLitres: gal(140), overLitres: gal(60), weekAllowanceLitres: gal(120) },
    'uses up to 140 gal a week; the allowance is 120 gal: 60 gal too much in all.',
  ],
  [
    'allowance-exceeded',
    { usedLitres: gal(1400), overLitres: gal(200), seasonAllowanceLitres: gal(1200) },
    'uses 1,400 gal over the season; the allowance is 1,200 gal: 200 gal too much.',
  ],
  [
    'flow-together',
    { flowLpm: gpm(23.3), sourceLpm: gpm(9), days: 20, groups: 2 },
    'zones on the same day need up to 23.3 gpm; the supply gives 9. Run in groups: Beds and unknown; Containers.',
  ],
  [
    'emitters-far-apart',
    { spacingM: inches(18), widestSpacingM: inches(12) },
    'emitters are 18 in apart; in this soil the wet spots meet up to 12 in.',
  ],
  [
    'line-downhill',
    { slopePercent: 8 },
    'its line lies on the downhill side of the plants, so water runs away from the roots.',
  ],
];

const GROUPS = [['beds', 'unknown'], ['containers']];

describe('the sentence of a notice', () => {
  it.each(SENTENCES)('%s, %o: %s', (kind, figures, sentence) => {
    expect(described(kind, { figures, groups: GROUPS }).sentence).toBe(sentence);
  });

  it('is tried above for every kind', () => {
    expect([...new Set(SENTENCES.map(([kind]) => kind))].sort()).toEqual(Object.keys(NOTICE_KINDS).sort());
  });

  it('has units, numbers and plurals of one language, English where nobody registered the reader’s', () => {
    const { sentence } = described('short', { figures: { ...shortage(1200, 23), demandLitres: gal(2400) } }, 'es');
    expect(sentence).toBe('short of water on 23 days: 1,200 gal, 50% of what it uses.');
  });
});

describe('where a notice holds', () => {
  const placed = (subject: NoticeSubject) => {
    const { name, where } = described('short', { ...subject, figures: shortage(1, 1) }, 'en-GB');
    return { name, where };
  };

  it('is told by planting, zone and weeks', () => {
    expect(placed({ zoneId: 'beds', plantingId: 'shrubs', firstWeek: 13, lastWeek: 14, weeks: [13, 14] })).toEqual({
      name: 'Shrubs',
      where: 'Beds, Shrubs, 5–18 Jul',
    });
  });

  it('counts the weeks where there are gaps between them', () => {
    expect(placed({ zoneId: 'beds', firstWeek: 13, lastWeek: 16, weeks: [13, 16] })).toEqual({
      name: 'Beds',
      where: 'Beds, 2 weeks in 5 Jul – 1 Aug',
    });
  });

  it('names plantings that are told together, and of many their zone alone', () => {
    const together = { zoneId: 'beds', plantingIds: ['tomatoes', 'shrubs'], firstWeek: 13, lastWeek: 13, weeks: [13] };
    expect(placed(together)).toEqual({ name: 'Tomatoes and Shrubs', where: 'Beds, 5–11 Jul' });
    const many = { ...together, plantingIds: ['tomatoes', 'shrubs', 'tomatoes', 'shrubs'] };
    expect(placed(many).name).toBe('Beds');
  });

  it('goes by the garden’s name where no zone is concerned', () => {
    expect(placed({})).toEqual({ name: 'Mixed garden', where: '' });
  });
});

/** Plans that between them, with those at random, give every kind of notice. */
const TROUBLED: readonly Plan[] = [
  potWith(),
  oneBed({ zones: [zone({ plantings: [tomatoes({ lines: [] })] })] }),
  oneBed({
    site: {
      ...oneBed().site,
      climate: emptyPlan({ name: 'Allotment', units: 'us', firstDay: '2027-06-07', weeks: 4 }).site.climate,
    },
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

it('finds every figure that a sentence speaks of in the engine’s notices', () => {
  const found = new Set<NoticeKind>();
  const random = fc.sample(arbitraryPlan({ mostWeeks: 16, mostZones: 4, mostPlantings: 3 }), { numRuns: 60, seed: 5 });
  for (const troubled of [...TROUBLED, ...random].map((plan) => computeSeason(plan))) {
    for (const notice of noticesOf(troubled)) {
      found.add(notice.kind);
      const { sentence } = describeNotice(notice, troubled, 'Garden', readerFor('en', 'us'));
      expect(sentence, `${notice.kind} ${JSON.stringify(notice.figures)}`).not.toMatch(/NaN|undefined|Infinity|–/);
    }
  }
  expect([...found].sort()).toEqual(Object.keys(NOTICE_KINDS).sort());
});
