/** No two zones and no two plantings of a plan may have the same id. */
import { shortText } from '../../words/short-text.ts';
import type { Issue } from '../issue.ts';
import { fieldsIn, listIn, textIn } from '../loose.ts';
import type { Path } from '../place.ts';

export function idRelations(zones: unknown): readonly Issue[] {
  const zoneIds = new Map<string, unknown>();
  const plantingIds = new Map<string, unknown>();
  const issues: Issue[] = [];
  const see = (ids: Map<string, unknown>, part: unknown, path: Path) => {
    const { id } = fieldsIn(part);
    if (typeof id !== 'string') return;
    if (!ids.has(id)) {
      ids.set(id, part);
      return;
    }
    const other = shortText(textIn(fieldsIn(ids.get(id))['name']) ?? id);
    issues.push({ path: [...path, 'id'], value: id, code: 'id-taken', values: { other } });
  };
  listIn(zones).forEach((zone, index) => {
    see(zoneIds, zone, ['zones', index]);
    listIn(fieldsIn(zone)['plantings']).forEach((planting, plantingIndex) => {
      see(plantingIds, planting, ['zones', index, 'plantings', plantingIndex]);
    });
  });
  return issues;
}
