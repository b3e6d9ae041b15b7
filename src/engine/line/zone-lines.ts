import type { DayNumber } from '../calendar.ts';
import type { Garden, GardenLine, GardenPlanting, GardenZone } from '../garden.ts';
import type { LateralProfile } from './lateral.ts';
import type { LineLimit } from './line-limit.ts';
import { lineFault, lineProfile, longestLine } from './line-profile.ts';
import { type LineRun, lineRun } from './line-run.ts';
import type { LongestRun } from './longest-run.ts';
import { liesOn } from './planting-flows.ts';
import { NOMINAL_PRESSURE_KPA } from './usual-pressures.data.ts';
import { velocityMs } from './velocity.ts';

export interface InletPressure {
  readonly kpa: number;
  /** False where the source tells none and the usual regulated pressure is taken. */
  readonly isKnown: boolean;
}

/** A planting's line as it lies in a week, and what its water does in it. */
export interface ZoneLine {
  readonly planting: GardenPlanting;
  readonly line: GardenLine;
  /** In the planting's list of lines. */
  readonly index: number;
  readonly run: LineRun;
  readonly inlet: InletPressure;
  /** Of one run. */
  readonly profile: LateralProfile;
  /** Where the tube carries most. */
  readonly velocityMs: number;
  /** What it breaks; undefined where all its emitters are in bounds. */
  readonly fault: LineLimit | undefined;
  /** For its spacing, flow, bore and slope at this pressure. */
  readonly longest: LongestRun;
}

/**
 * The lines of a zone that lie in a week of the season, each as it is on the week's last day on which its planting is in
 * the ground, at the pressure that feeds it on that day. Solved when asked for, and kept while planting and line are the
 * same objects.
 */
export function zoneLines({ span }: Pick<Garden, 'span'>, zone: GardenZone, week: number): ZoneLine[] {
  const firstDay = span.firstDay + 7 * week;
  return zone.plantings.flatMap((planting) => {
    const day = Math.min(firstDay + 6, planting.to);
    if (day < Math.max(firstDay, planting.from)) return [];
    const inlet = feedOn(planting, day);
    return planting.lines.flatMap((line, index) =>
      liesOn(line, day) ? (plantingLine(planting, index, inlet) ?? []) : [],
    );
  });
}

/**
 * Pressure at the inlet of a planting's lines on a day: what is left of the source's behind its solid lines. Where none is known the
 * usual regulated one, with which lines are looked at, not reckoned.
 */
export function feedOn({ flows }: Pick<GardenPlanting, 'flows'>, day: DayNumber): InletPressure {
  const kpa = flows.find(({ from, to }) => from <= day && day <= to)?.pressureKpa;
  return kpa === undefined ? { kpa: NOMINAL_PRESSURE_KPA, isKnown: false } : { kpa, isKnown: true };
}

/** One line of a planting at a pressure; undefined where it has no emitter. */
export function plantingLine(planting: GardenPlanting, index: number, inlet: InletPressure): ZoneLine | undefined {
  const line = planting.lines[index];
  if (line === undefined) return undefined;
  const run = lineRun(line, planting);
  const profile = lineProfile(line, planting, inlet.kpa);
  const longest = longestLine(line, planting, inlet.kpa);
  if (run === undefined || profile === undefined || longest === undefined) return undefined;
  const mostLph = profile.reachFlowsLph.reduce((most, flow) => Math.max(most, Math.abs(flow)), 0);
  return {
    planting,
    line,
    index,
    run,
    inlet,
    profile,
    velocityMs: velocityMs({ flowLph: mostLph, insideDiameterMm: line.insideDiameterMm }),
    fault: lineFault(line, planting, inlet.kpa),
    longest,
  };
}

/** First and last day on which a line of a planting lies and the planting is in the ground, within the given days. */
export function lineDays(
  { lines, from, to }: GardenPlanting,
  index: number,
  { first, last }: { readonly first: DayNumber; readonly last: DayNumber },
): { readonly first: DayNumber; readonly last: DayNumber } | undefined {
  const line = lines[index];
  if (line === undefined) return undefined;
  const begins = Math.max(line.from, from, first);
  const ends = Math.min(line.to ?? Number.POSITIVE_INFINITY, to, last);
  return begins <= ends ? { first: begins, last: ends } : undefined;
}
