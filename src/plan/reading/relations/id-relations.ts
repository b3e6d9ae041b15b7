/** No two zones and no two plantings of a plan may have the same id. */
import { shortText } from '../../words/short-text.ts';
import type { Finding, Path } from '../finding.ts';
import { fieldsIn, listIn, textIn } from '../loose.ts';

export function idRelations(zones: unknown): readonly Finding[] {
  const zoneIds = new Map<string, string>();
  const plantingIds = new Map<string, string>();
  const findings: Finding[] = [];
  const see = (ids: Map<string, string>, part: unknown, path: Path) => {
    const { id, name } = fieldsIn(part);
    if (typeof id !== 'string') return;
    const other = ids.get(id);
    if (other !== undefined)
      findings.push({ path: [...path, 'id'], value: id, expected: `an id of its own: ${other} has it too` });
    else ids.set(id, `“${shortText(textIn(name) ?? id)}”`);
  };
  listIn(zones).forEach((zone, place) => {
    see(zoneIds, zone, ['zones', place]);
    listIn(fieldsIn(zone)['plantings']).forEach((planting, at) => {
      see(plantingIds, planting, ['zones', place, 'plantings', at]);
    });
  });
  return findings;
}
