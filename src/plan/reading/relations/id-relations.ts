/** No two zones and no two plantings of a plan may have the same id. */
import { shortText } from '../../words/short-text.ts';
import type { Finding, Path } from '../finding.ts';
import { fieldsIn, listIn, textIn } from '../loose.ts';

export function idRelations(zones: unknown): readonly Finding[] {
  const zoneIds = new Map<string, unknown>();
  const plantingIds = new Map<string, unknown>();
  const findings: Finding[] = [];
  const see = (ids: Map<string, unknown>, part: unknown, path: Path) => {
    const { id } = fieldsIn(part);
    if (typeof id !== 'string') return;
    if (!ids.has(id)) {
      ids.set(id, part);
      return;
    }
    const other = `“${shortText(textIn(fieldsIn(ids.get(id))['name']) ?? id)}”`;
    findings.push({ path: [...path, 'id'], value: id, expected: `an id of its own: ${other} has it too` });
  };
  listIn(zones).forEach((zone, place) => {
    see(zoneIds, zone, ['zones', place]);
    listIn(fieldsIn(zone)['plantings']).forEach((planting, at) => {
      see(plantingIds, planting, ['zones', place, 'plantings', at]);
    });
  });
  return findings;
}
