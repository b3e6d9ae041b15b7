import { FLOW_VARIATION_LIMIT } from '../../../engine/line/flow-variation.ts';
import type { LateralProfile } from '../../../engine/line/lateral.ts';
import { firstEmitterWorks, lineFault, lineProfile } from '../../../engine/line/line-profile.ts';
import { plantingLine, type ZoneLine } from '../../../engine/line/zone-lines.ts';
import type { Season } from '../../../engine/season/season.ts';
import { type LineSpan, lineSpans, placeOfLine } from '../line-spans.ts';
import type { FoundNotice, LinePressureFigures } from '../notice.ts';
import type { NoticeSeverity } from '../severity.ts';

/**
 * Lines whose pressure does not do for all their emitters, or whose plain emitters differ too much: one notice each, by
 * the worst of the sources that feed it. `pressure-low` where not even one emitter would work, else `line-too-long`.
 *
 * A danger where some of the emitters are dry, else a warning; no more than a note where the pressure or the spacing is
 * not known but taken as usual, and nothing where neither is.
 */
export function linePressure(season: Season): readonly FoundNotice<'line-too-long' | 'pressure-low'>[] {
  return lineSpans(season).flatMap((spans) => {
    const faulty = spans.filter(({ line, planting, inlet }) => lineFault(line, planting, inlet.kpa) !== undefined);
    return [faulty.filter(isHopeless), faulty.filter((span) => !isHopeless(span))].flatMap(noticeOf);
  });
}

/** Not one emitter would work, however short the line. */
function isHopeless({ line, planting, inlet }: LineSpan): boolean {
  return !firstEmitterWorks(line, planting, inlet.kpa);
}

function noticeOf(spans: readonly LineSpan[]): readonly FoundNotice<'line-too-long' | 'pressure-low'>[] {
  // Of the worst alone it is asked how long it might be: to find that takes many times as long.
  const [span] = spans.toSorted((left, right) => beyondOf(right) - beyondOf(left));
  const worst = span && plantingLine(span.planting, span.index, span.inlet);
  if (worst === undefined || (!worst.inlet.isKnown && worst.run.spacing === 'estimated')) return [];
  return [
    {
      kind: worst.longest.outlets === 0 ? 'pressure-low' : 'line-too-long',
      severity: severityOf(worst),
      ...placeOfLine(spans),
      figures: figuresOf(worst),
    },
  ];
}

function severityOf({ inlet, run, profile }: ZoneLine): NoticeSeverity {
  if (!inlet.isKnown || run.spacing === 'estimated') return 'note';
  return profile.wetOutlets < profile.pressuresKpa.length ? 'danger' : 'warning';
}

function figuresOf(of: ZoneLine): LinePressureFigures {
  const { run, profile, longest, inlet, line } = of;
  return {
    runLengthM: run.lengthM,
    longestRunM: longest.lengthM,
    runs: run.runs,
    inletPressureKpa: inlet.kpa,
    endPressureKpa: profile.endPressureKpa,
    leastPressureKpa: profile.leastPressureKpa,
    neededPressureKpa: line.compensating ? line.leastPressureKpa : 0,
    flowVariation: profile.flowVariation,
    uniformity: profile.uniformity,
    dryShare: 1 - profile.wetOutlets / profile.pressuresKpa.length,
    velocityMs: of.velocityMs,
    beyondBounds: beyondBounds(of),
  };
}

function beyondOf({ line, planting, inlet }: LineSpan): number {
  return beyondBounds({ line, profile: lineProfile(line, planting, inlet.kpa) as LateralProfile });
}

/** How far the line is out of its bounds, as a share: what is missing of the pressure and too much of the spread. */
function beyondBounds({ line, profile }: Pick<ZoneLine, 'line' | 'profile'>): number {
  const isAsked = line.compensating && line.leastPressureKpa > 0;
  const missing = isAsked ? Math.max(0, 1 - profile.leastPressureKpa / line.leastPressureKpa) : 0;
  const dryShare = 1 - profile.wetOutlets / profile.pressuresKpa.length;
  return missing + dryShare + Math.max(0, profile.flowVariation - FLOW_VARIATION_LIMIT);
}
