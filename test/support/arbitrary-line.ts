/** Random lines: every kind, layout, topology and emitter; several of a planting, with days of their own. */
import fc from 'fast-check';
import type { PlanLine } from '../../src/plan/schema/plan-schema.ts';
import { amount, dayNear, type Frame, inOrder } from './arbitrary-parts.ts';

/** Several may lie at once; none ends before it is laid. */
export function arbitraryLines(frame: Frame): fc.Arbitrary<PlanLine[]> {
  return fc.array(arbitraryLine(frame), { maxLength: 3 });
}

export function arbitraryLine(frame: Frame): fc.Arbitrary<PlanLine> {
  return lineOfAnyDays(frame).map((line) => ({ ...line, ...inOrder(line) }));
}

function lineOfAnyDays(frame: Frame): fc.Arbitrary<PlanLine> {
  const days = { from: dayNear(frame, 20, 20), to: dayNear(frame, 0, 30) };
  const tube = {
    risePercent: fc.integer({ min: -10, max: 10 }),
    insideDiameter: amount('bore', frame, 4, 20),
  };
  const flow = amount('emitterFlow', frame, 0.5, 8);
  const hydraulics = {
    topology: fc.constantFrom<('dead-end' | 'loop')[]>('dead-end', 'loop'),
    slopeSide: fc.constantFrom<('level' | 'uphill' | 'downhill')[]>('level', 'uphill', 'downhill'),
    ...tube,
    application: fc.oneof(
      fc.record({ kind: fc.constant('efficiency' as const), value: fc.constantFrom(0.5, 0.75, 1) }),
      fc.record({ kind: fc.constant('distribution-uniformity' as const), value: fc.constantFrom(0.6, 0.9) }),
    ),
    emitter: fc.oneof(
      fc.record({ kind: fc.constant('compensating' as const), leastPressure: amount('pressure', frame, 40, 110) }),
      fc.record({ kind: fc.constant('plain' as const), exponent: fc.constantFrom(0.4, 0.5, 0.75, 1) }),
    ),
  };
  return fc.oneof(
    fc.record(
      {
        kind: fc.constant('dripline' as const),
        ...days,
        flow,
        spacing: amount('spacing', frame, 0.1, 0.6),
        layout: arbitraryLayout(frame),
        ...hydraulics,
      },
      { requiredKeys: ['kind', 'flow', 'spacing', 'layout'] },
    ),
    fc.record(
      { kind: fc.constant('point' as const), ...days, flow, count: fc.integer({ min: 1, max: 8 }), ...hydraulics },
      { requiredKeys: ['kind', 'flow', 'count'] },
    ),
    fc.record(
      {
        kind: fc.constant('spray' as const),
        ...days,
        flow: amount('emitterFlow', frame, 15, 80),
        count: fc.integer({ min: 1, max: 12 }),
        ...hydraulics,
      },
      { requiredKeys: ['kind', 'flow', 'count'] },
    ),
    fc.record(
      { kind: fc.constant('solid' as const), ...days, length: amount('length', frame, 0.5, 40), ...tube },
      { requiredKeys: ['kind'] },
    ),
  );
}

type Layout = Extract<PlanLine, { kind: 'dripline' }>['layout'];

function arbitraryLayout(frame: Frame): fc.Arbitrary<Layout> {
  return fc.oneof(
    fc.record({ kind: fc.constant('length' as const), length: amount('length', frame, 0.2, 90) }),
    fc.record({
      kind: fc.constant('rows' as const),
      rows: fc.integer({ min: 1, max: 8 }),
      length: amount('length', frame, 0.2, 20),
    }),
    fc.record(
      {
        kind: fc.constant('loops' as const),
        perPlant: fc.integer({ min: 1, max: 3 }),
        diameter: amount('diameter', frame, 0.2, 3),
      },
      { requiredKeys: ['kind', 'perPlant'] },
    ),
  );
}
