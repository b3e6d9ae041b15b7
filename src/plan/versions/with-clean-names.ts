/** Names of a document that has not been checked, made such as version 2 takes. */
import { fieldsIn, type Loose, listIn, recordIn, textIn } from '../reading/loose.ts';
import { cleanName, NAME_PATTERN } from '../schema/name-text.ts';

export interface CleanNames {
  /** The same object where every name was clean. */
  readonly document: Loose;
  /** How many were not. */
  readonly names: number;
}

/**
 * Of the plan, its zones, their plantings and its sources of water. A name of which nothing shows becomes the id of what it names, or its
 * number in the list; that of the plan its first day.
 */
export function withCleanNames(document: Loose): CleanNames {
  let names = 0;
  const named = (part: unknown, other: string): unknown => {
    const record = recordIn(part);
    const name = textIn(record?.['name']);
    if (name === undefined || NAME_PATTERN.test(name)) return part;
    names++;
    return { ...record, name: cleanName(name) || other };
  };
  const each = (part: unknown, key: string, clean: (item: unknown, index: number) => unknown): unknown => {
    const record = recordIn(part);
    const list = listIn(record?.[key]);
    const items = list.map(clean);
    return items.every((item, index) => item === list[index]) ? part : { ...record, [key]: items };
  };
  const byId = (part: unknown, index: number) =>
    named(part, cleanName(textIn(fieldsIn(part)['id']) ?? '') || String(index + 1));

  const zones = each(document, 'zones', (zone, index) => byId(each(zone, 'plantings', byId), index));
  const supply = each(fieldsIn(zones)['supply'], 'sources', (source, index) => named(source, String(index + 1)));
  const parts = supply === fieldsIn(zones)['supply'] ? zones : { ...fieldsIn(zones), supply };
  const firstDay = textIn(fieldsIn(document['season'])['firstDay']) ?? '';
  return { document: fieldsIn(named(parts, cleanName(firstDay) || '1')), names };
}
