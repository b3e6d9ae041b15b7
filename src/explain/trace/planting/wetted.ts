/** How much of a planting's ground its lines wet, how wide, and how fast water comes there. */
import type { PlantingFlow } from '../../../engine/garden.ts';
import { flowsByWeek, longestFlow, type WettedGround, wettedByLineM2 } from '../../../engine/line/wetted-share.ts';
import { WETTING_GROUPS } from '../../../engine/line/wetted-width.data.ts';
import { wettedWidthM } from '../../../engine/line/wetted-width.ts';
import type { TraceSource, TraceStep, TraceValue } from '../trace-step.ts';
import { area, code, count, emitterFlow, factor, input, length, rate, rootDepth, share } from '../trace-value.ts';
import { weekLines } from './lines.ts';
import { isParted, type PlantingCell } from './planting-cell.ts';

const SOURCE: readonly TraceSource[] = [
  { id: 'not-checked', cite: 'USDA-NRCS NEH Part 623 ch. 7' },
  { id: 'not-checked', cite: 'Schwartzman and Zur (1986)' },
];

/** Where they wet a part of it; a pot is wetted whole. */
export function wettedSteps(cell: PlantingCell): readonly TraceStep[] {
  const { planting, zone, days } = cell;
  const { isShareTyped, areaM2, lines, flows, rootZone } = planting;
  if (!isParted(cell)) return [];
  const result = factor(days.demand.share);
  const ground = { areaM2, lines, flows, rootDepthM: rootZone.depthM, texture: zone.soil.texture };
  const each = wettedLines(ground, wettingFlow(cell));
  const steps = each.flatMap((line) => lineSteps(ground, line));
  if (isShareTyped === true) {
    return [...steps, { id: 'wetted-share', variant: 'typed', source: [{ id: 'plan' }], inputs: [], result }];
  }
  const wet = each.map(({ number, wetM2 }) => input({ id: 'wetted-ground', line: number }, area(wetM2)));
  return [
    ...steps,
    {
      id: 'wetted-share',
      variant: 'computed',
      source: SOURCE,
      inputs: [...wet, input('ground', area(areaM2))],
      result,
    },
  ];
}

interface WettedLine {
  readonly line: WettedGround['lines'][number];
  readonly number: number;
  readonly flowLph: number;
  readonly wetM2: number;
}

/** The flow that lasts longest; where they wet other shares, in the week. */
function wettingFlow({ planting: { flows, wettedShareByWeek }, season, week }: PlantingCell) {
  const { firstDay, weeks } = season.garden.span;
  return wettedShareByWeek === undefined ? longestFlow(flows) : flowsByWeek(flows, firstDay, weeks)[week];
}

function wettedLines(ground: WettedGround, flow: PlantingFlow | undefined): readonly WettedLine[] {
  return ground.lines
    .map((line, at) => {
      const flowLph = flow?.linesLph[at] ?? 0;
      return { line, number: at + 1, flowLph, wetM2: wettedByLineM2(line, flowLph, ground) };
    })
    .filter(({ wetM2 }) => wetM2 > 0);
}

function lineSteps(
  { areaM2, rootDepthM, texture }: WettedGround,
  { line, number, flowLph, wetM2 }: WettedLine,
): readonly TraceStep[] {
  const of = { id: 'wetted-ground', line: number, result: area(wetM2) } as const;
  if (line.kind === 'spray') {
    return [{ ...of, variant: 'all', source: [{ id: 'choice' }], inputs: [input('ground', area(areaM2))] }];
  }
  const ofEmitterLph = flowLph / line.emitters;
  const widthM = wettedWidthM({ texture, rootDepthM, flowLph: ofEmitterLph });
  const width = input('wetted-width', length(widthM));
  const emitters = input('emitters', count(line.emitters));
  return [
    {
      id: 'wetted-width',
      line: number,
      source: SOURCE,
      inputs: [
        input('soil-group', code('soil', WETTING_GROUPS[texture])),
        input('root-depth', rootDepth(rootDepthM)),
        input('wetting-flow', emitterFlow(ofEmitterLph)),
      ],
      result: length(widthM),
    },
    line.lengthM === undefined
      ? { ...of, variant: 'circles', source: [{ id: 'definition' }], inputs: [emitters, width] }
      : {
          ...of,
          variant: 'strip',
          source: [{ id: 'definition' }],
          inputs: [emitters, width, input('line-length', length(line.lengthM))],
        },
  ];
}

/** Where a minute brings another depth to the roots than over all of the ground: by the flows of the week. */
export function askedRateSteps(cell: PlantingCell): readonly TraceStep[] {
  const { days, dayOf } = cell;
  const { leachingFraction, rest } = days.demand;
  if (!isParted(cell) && leachingFraction === 0) return [];
  const leaching = isParted(cell) ? 'part-leaching' : 'leaching';
  const lines = weekLines(cell);
  const flows = [...new Set(lines.map(({ flow }) => flow))];
  return flows.flatMap((flow) => {
    const laid = lines.filter((line) => line.flow === flow);
    const first = laid[0]?.indexes.find((day) => !rest?.[day]);
    if (first === undefined) return [];
    return [
      {
        id: 'asked-rate',
        variant: leachingFraction === 0 ? 'part' : leaching,
        ...(flows.length > 1 ? { from: dayOf(first) } : {}),
        source: [{ id: 'definition' }],
        inputs: [
          ...laid.map(({ which, netRate }) => input({ id: 'net-rate', ...which }, rate(netRate))),
          ...(leachingFraction === 0 ? [] : [leachingInput(cell)]),
          ...shareInput(cell),
        ],
        result: rate(60 * (days.asked.netMmPerMinute[first] as number)),
      },
    ];
  });
}

export function leachingInput({ days: { demand } }: PlantingCell): TraceValue {
  return input('leaching-fraction', share(demand.leachingFraction));
}

/** Nothing where all of the ground is wetted. */
export function shareInput(cell: PlantingCell): readonly TraceValue[] {
  return isParted(cell) ? [input('wetted-share', factor(cell.days.demand.share))] : [];
}
