import { shortText } from '../plan/words/short-text.ts';
import { fieldNamesWords } from './en/field-names.ts';
import type { Language } from './language.ts';

/** Groups that say nothing of their own once a field inside them is named. */
const SILENT = new Set([
  ...['extent', 'need', 'rule', 'application', 'flow', 'emitter', 'layout'],
  ...['inGround', 'stages', 'coefficients', 'allowance'],
]);

/**
 * A field as a gardener would call it, by the groups that it stands in: `extent, area` is `area`; `extent, kind` is `kind of extent`;
 * `establishing, until` stays both. A field that no plan has keeps its own name.
 */
export function fieldName(fields: readonly string[], language: Language): string {
  const { kindOf } = fieldNamesWords(language);
  return fields
    .map((field, index) => {
      const group = fields[index - 1];
      if (index < fields.length - 1 && SILENT.has(field)) return '';
      return field === 'kind' && group !== undefined
        ? kindOf(nameOf(group, '', language))
        : nameOf(field, group, language);
    })
    .filter((name) => name !== '')
    .join(', ');
}

function nameOf(field: string, group = '', language: Language): string {
  const { field: names, inGroup } = fieldNamesWords(language);
  return ownText(inGroup, `${group}.${field}`) ?? ownText(names, field) ?? shortText(field);
}

function ownText(names: Readonly<Record<string, string>>, key: string): string | undefined {
  return Object.hasOwn(names, key) ? names[key] : undefined;
}
