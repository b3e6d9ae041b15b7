/** Small invented gardens with one trouble of line or supply each, for the remedies that it has. */
import type { NoticeKind } from '../../src/explain/notices/notice.ts';
import type { Plan, PlanPlanting, PlanSupply, PlanZone } from '../../src/plan/schema/plan-schema.ts';
import { mixedGarden, oneBed, shrubs, tomatoes, zone } from './small-plans.ts';

/** Dripline of 0.9 gph every 12 in, 30 psi at its inlet: 360 ft would do, far less than 600. */
export function longLine(change: Partial<PlanPlanting> = {}): Plan {
  const layout = { kind: 'length', length: 600 } as const;
  const planting = tomatoes({
    lines: [{ kind: 'dripline', flow: 0.9, spacing: 12, layout }],
    extent: { kind: 'area', area: 900 },
    ...change,
  });
  return oneBed({
    zones: [zone({ plantings: [planting] })],
    supply: { sources: [{ name: 'Main', pressure: 30 }] },
  });
}

/** Tomatoes of 20 emitters a row, 0.9 gph each: 0.3 gpm a row. */
export const rowsOf = (id: string, name: string, rows: number): PlanPlanting =>
  tomatoes({
    ...{ id, name },
    lines: [{ kind: 'dripline', flow: 0.9, spacing: 12, layout: { kind: 'rows', rows, length: 20 } }],
  });

const source = (gpm: number): PlanSupply => ({ sources: [{ name: 'Hose', flow: { kind: 'typed', flow: gpm } }] });

/** Two plantings of 1.2 and 0.9 gpm on a hose that gives 1.5. */
export function greatFlow(): Plan {
  const plantings = [rowsOf('tomatoes', 'Tomatoes', 4), rowsOf('peppers', 'Peppers', 3)];
  return oneBed({ zones: [zone({ plantings })], supply: source(1.5) });
}

/** Three zones of 1.2 gpm on the same two days, on a hose that gives 2.5. */
export function flowsTogether(): Plan {
  const zones = ['North', 'Middle', 'South'].map((name) =>
    zone({ id: name.toLowerCase(), name, wateringDays: 2, plantings: [rowsOf(`in-${name}`.toLowerCase(), 'Rows', 4)] }),
  );
  return oneBed({
    zones,
    supply: { ...source(2.5), window: { weekdays: ['mon', 'tue', 'wed', 'thu'], hoursPerDay: 24 } },
  });
}

/** Two alike beds that water on the same two days, one after another, in a window a little too short for both. */
export function shortWindow(): Plan {
  const zones = ['One', 'Two'].map((name) =>
    zone({
      ...{ id: name.toLowerCase(), name, wateringDays: ['mon', 'thu'], longestCycleMinutes: 600 },
      plantings: [tomatoes({ id: `in-${name}`.toLowerCase() })],
    }),
  );
  return oneBed({ zones, supply: { ...source(1.5), window: { hoursPerDay: 1 } } });
}

export function smallAllowance(): Plan {
  const garden = mixedGarden({ choices: {}, log: {} });
  return { ...garden, supply: { sources: garden.supply?.sources ?? [], allowance: { perWeek: 120 } } };
}

/** 6 gpm in one run of dripline; fed in its middle each half has 3 (5 ft/s is at 3.8 gpm in its tube of 0.56 in). */
export function fastLine(): Plan {
  const layout = { kind: 'length', length: 40 } as const;
  const planting = tomatoes({
    extent: { kind: 'area', area: 2000 },
    lines: [{ kind: 'dripline', flow: 4.5, spacing: 6, layout, insideDiameter: 0.56 }],
  });
  return oneBed({ zones: [zone({ plantings: [planting] })], supply: { sources: [{ name: 'Main', pressure: 60 }] } });
}

/** Half full in March, with a roof; a larger tank would last. */
export function dryTank(): Plan {
  return oneBed({
    season: { firstDay: '2027-03-01', weeks: 14 },
    zones: [zone({ plantings: [tomatoes({ need: { kind: 'class', class: 'moderate' } })] })],
    supply: { sources: [{ name: 'Main' }], tank: { capacity: 60, start: 60, roofArea: 300 } },
  });
}

/** Emitters every 18 in on sand. */
export function farEmitters(): Plan {
  const layout = { kind: 'rows', rows: 4, length: 20 } as const;
  const planting = tomatoes({ lines: [{ kind: 'dripline', flow: 0.9, spacing: 18, layout }] });
  return oneBed({ zones: [zone({ soil: 'sand', plantings: [planting] })] });
}

export function downhillLine(): Plan {
  const layout = { kind: 'rows', rows: 4, length: 20 } as const;
  const planting = tomatoes({
    lines: [{ kind: 'dripline', flow: 0.9, spacing: 12, layout, slopeSide: 'downhill', risePercent: 2 }],
  });
  return oneBed({ zones: [zone({ slopePercent: 8, plantings: [planting] })] });
}

/** Tomatoes with 6 in of roots, watered once a week. */
export function fewDays(): Plan {
  return oneBed({ zones: [zone({ wateringDays: 1, plantings: [tomatoes({ rootDepth: 6 })] })] });
}

/** Tomatoes on clay that takes in 20 min at a time, once a week, by a timer that starts once a day in steps of 10 min. */
export function fewStarts(): Plan {
  const given = { wateringDays: 1, timerStepMinutes: 10, longestCycleMinutes: 20, startsADay: 1 } as const;
  return oneBed({ zones: [zone({ ...given, soil: 'clay' })] });
}

/** Shrubs behind a shut-off, with one emitter a plant, beside tomatoes with plenty of flow. */
export function shutOffShort(): Plan {
  const lines = [{ kind: 'point', flow: 0.5, count: 1 }] as const;
  const need = { kind: 'class', class: 'moderate' } as const;
  return mixedGarden({
    choices: {},
    log: {},
    zones: [zone({ plantings: [tomatoes(), shrubs({ need, lines: [...lines] })] })],
  });
}

/** Lettuce that drains beside tomatoes which set the minutes. */
export function overwatered(): Plan {
  const need = { kind: 'class', class: 'low' } as const;
  return oneBed({ zones: [zone({ plantings: [tomatoes(), tomatoes({ id: 'sage', name: 'Sage', need })] })] });
}

/** Steps of 30 min on a clay bank. */
export function longSteps(): Plan {
  return oneBed({ zones: [zone({ soil: 'clay', slopePercent: 9, timerStepMinutes: 30 })] });
}

/** Tomatoes that need more on one day than the window has. */
export function longRun(): Plan {
  return oneBed({
    zones: [zone({ wateringDays: 1, longestCycleMinutes: 600 })],
    supply: { ...source(9), window: { hoursPerDay: 1 } },
  });
}

const MONTH_DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

/** A pot of 10 L (or `volume`) with a plant 60 cm across that uses 8.4 mm a day, watered once every day. */
export function potWith(change: Partial<PlanZone> = {}, volume = 10): Plan {
  return {
    format: 'runnel-plan',
    version: 2,
    units: 'metric',
    name: 'A pot',
    season: { firstDay: '2027-06-07', weeks: 3 },
    site: {
      latitude: 40,
      soil: 'loam',
      climate: { source: 'invented', eto: MONTH_DAYS.map((days) => 7 * days), rain: MONTH_DAYS.map(() => 0) },
    },
    zones: [
      {
        id: 'pots',
        name: 'Pots',
        wateringDays: 7,
        startsADay: 1,
        longestCycleMinutes: 600,
        plantings: [
          {
            id: 'pot',
            name: 'Pot',
            need: { kind: 'class', class: 'high', factor: 0.9, microclimate: 4 / 3 },
            extent: { kind: 'canopy', count: 1, diameter: 60 },
            container: { volume },
            lines: [{ kind: 'point', flow: 4, count: 1 }],
          },
        ],
        ...change,
      },
    ],
  };
}

/** One row down a bed 4 ft wide. */
export function oneRow(change: Partial<PlanPlanting> = {}): Plan {
  const planting = tomatoes({
    rootDepth: 30,
    extent: { kind: 'area', area: 32 },
    lines: [{ kind: 'dripline', flow: 0.9, spacing: 12, layout: { kind: 'rows', rows: 1, length: 8 } }],
    ...change,
  });
  return oneBed({ zones: [zone({ plantings: [planting] })] });
}

/** Each trouble with a garden that has it. */
export const TROUBLES: readonly (readonly [NoticeKind, () => Plan])[] = [
  ['line-too-long', longLine],
  ['flow-too-great', greatFlow],
  ['flow-together', flowsTogether],
  ['window-too-short', shortWindow],
  ['allowance-exceeded', smallAllowance],
  ['flow-too-fast', fastLine],
  ['tank-dry', dryTank],
  ['emitters-far-apart', farEmitters],
  ['line-downhill', downhillLine],
  ['few-days', fewDays],
  ['beyond-timer', fewStarts],
  ['shut-off-short', shutOffShort],
  ['over', overwatered],
  ['step-too-long', longSteps],
  ['too-long', longRun],
  ['pot-dries-out', () => potWith()],
  ['wetted-too-little', () => oneRow()],
];
