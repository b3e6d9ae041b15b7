/** Small invented gardens with one trouble of line or supply each, for the remedies that it has. */
import type { NoticeKind } from '../../src/explain/notices/notice.ts';
import type { Plan, PlanPlanting, PlanSupply } from '../../src/plan/schema/plan-schema.ts';
import { mixedGarden, oneBed, tomatoes, zone } from './small-plans.ts';

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

/** Each trouble with a garden that has it. */
export const TROUBLES: readonly (readonly [NoticeKind, () => Plan])[] = [
  ['line-too-long', longLine],
  ['flow-too-great', greatFlow],
  ['flow-together', flowsTogether],
  ['window-too-short', shortWindow],
  ['allowance-exceeded', smallAllowance],
  ['tank-dry', dryTank],
  ['emitters-far-apart', farEmitters],
  ['line-downhill', downhillLine],
];
