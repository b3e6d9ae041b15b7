import type { GardenPlanting, PlantingFlow } from '../../../engine/garden.ts';
import { liesOn } from '../../../engine/line/planting-flows.ts';
import type { Season } from '../../../engine/season/season.ts';
import { flowSpans } from '../flow-spans.ts';
import type { FoundNotice } from '../notice.ts';
import { placeOfSpans } from '../planting-spans.ts';

/** Less of its label than this is told: emitters of one line may differ so much anyhow (`FLOW_VARIATION_LIMIT`). */
const TOLD_BELOW = 0.9;

/** Below this share of the label it is to be checked. Rule of this kit. */
const CHECKED_BELOW = 0.5;

/**
 * Plantings whose lines give less than their label says, since the pressure is less than that of the label: minutes count on what
 * they give. One notice a planting, by the days on which they give least.
 */
export function flowBelowLabel(season: Season): readonly FoundNotice<'flow-below-label'>[] {
  return flowSpans(season).flatMap((spans): readonly FoundNotice<'flow-below-label'>[] => {
    const told = spans.filter(({ planting, flow }) => shareOfLabel(planting, flow) < TOLD_BELOW);
    const [worst] = told.toSorted(
      (one, other) => shareOfLabel(one.planting, one.flow) - shareOfLabel(other.planting, other.flow),
    );
    if (worst?.flow.pressureKpa === undefined) return [];
    return [
      {
        kind: 'flow-below-label',
        severity: shareOfLabel(worst.planting, worst.flow) < CHECKED_BELOW ? 'warning' : 'note',
        ...placeOfSpans(told),
        figures: {
          flowLph: worst.flow.flowLph,
          labelLph: labelLph(worst.planting, worst.flow),
          pressureKpa: worst.flow.pressureKpa,
        },
      },
    ];
  });
}

function shareOfLabel(planting: GardenPlanting, flow: PlantingFlow): number {
  return flow.flowLph / labelLph(planting, flow);
}

function labelLph({ lines }: GardenPlanting, { from }: PlantingFlow): number {
  return lines.reduce((sum, line) => (liesOn(line, from) ? sum + line.flowLph : sum), 0);
}
