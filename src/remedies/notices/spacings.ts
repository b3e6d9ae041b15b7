/** The catalogue's spacings for a dripline that lies. */
import { CATALOGUE } from '../../engine/line/catalogue.data.ts';
import { WIDEST_EMITTER_SPACING_M } from '../../engine/line/emitter-spacing.data.ts';
import type { Plan } from '../../plan/schema/plan-schema.ts';
import { isSameSize, labelled } from '../mix/in-plan-units.ts';
import { type NoticedLine, replacingLine } from './noticed-line.ts';
import type { RemedyCandidate } from './remedy.ts';

/** The same dripline with each spacing that is sold, is wanted, and joins in the soil of the zone. */
export function otherSpacings(
  plan: Plan,
  of: NoticedLine,
  kind: 'wider-spacing' | 'closer-spacing',
  isWanted: (spacingM: number, laidM: number) => boolean,
): readonly RemedyCandidate[] {
  const { line, garden, soil } = of;
  const laidM = garden.line.spacingM;
  if (line.kind !== 'dripline' || laidM === undefined) return [];
  const widestM = WIDEST_EMITTER_SPACING_M[soil.texture];
  return soldSpacingsM()
    .filter((spacingM) => spacingM <= widestM * (1 + 1e-9) && !isSameSize(spacingM, laidM) && isWanted(spacingM, laidM))
    .map((spacingM) => {
      const spacing = labelled(spacingM, 'spacing', plan.units);
      return { kind, plantingId: of.planting.id, spacingM, edit: replacingLine(of, { ...line, spacing }) };
    });
}

function soldSpacingsM(): readonly number[] {
  return [...new Set(CATALOGUE.driplines.flatMap(({ spacingsM }) => spacingsM))].sort((left, right) => left - right);
}
