import { gardenZonesWords } from '../../language/en/garden-zones.ts';
import type { PlanZone } from '../../plan/schema/plan-schema.ts';
import type { FormContext } from './form-context.ts';
import { mostFlowLph } from './planting-in-garden.ts';

/** `3 plantings, 2.4 gpm when all is open`. */
export function zoneSummary({ id }: PlanZone, { season, reader, format }: FormContext): string {
  const zone = season.garden.zones.find((candidate) => candidate.id === id);
  const flows = (zone?.plantings ?? []).map(mostFlowLph);
  const flowLpm = flows.reduce((sum, flow) => sum + flow, 0) / 60;
  return gardenZonesWords(reader.language).zoneSummary(format, flows.length, flowLpm);
}
