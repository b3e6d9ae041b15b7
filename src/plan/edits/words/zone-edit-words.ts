import { fieldsInWords } from '../../reading/field-words.ts';
import type { Plan } from '../../schema/plan-schema.ts';
import { shortText } from '../../words/short-text.ts';
import type { LineEdit, PlantingEdit, ZoneEdit } from '../edit.ts';
import { listed, plantingName, zoneName } from './names.ts';

export function zoneEditInWords(plan: Plan, edit: ZoneEdit): string {
  switch (edit.type) {
    case 'add-zone':
      return `${shortText(edit.zone.name)} added`;
    case 'change-zone':
      return `${zoneName(plan, edit.zone)}: ${changeInWords(edit.change)}`;
    case 'remove-zone':
      return `Zone ${zoneName(plan, edit.zone)} removed`;
    case 'move-zone':
      return `Zone ${zoneName(plan, edit.zone)} moved`;
  }
}

export function plantingEditInWords(plan: Plan, edit: PlantingEdit): string {
  const zone = zoneName(plan, edit.zone);
  switch (edit.type) {
    case 'add-planting':
      return `${zone}: ${shortText(edit.planting.name)} added`;
    case 'change-planting':
      return `${zone}, ${plantingName(plan, edit.planting)}: ${changeInWords(edit.change)}`;
    case 'remove-planting':
      return `${zone}: ${plantingName(plan, edit.planting)} removed`;
    case 'move-planting': {
      const name = plantingName(plan, edit.planting);
      return edit.toZone === edit.zone
        ? `${zone}: ${name} moved`
        : `${name} moved from ${zone} to ${zoneName(plan, edit.toZone)}`;
    }
  }
}

const LINE_EDITS = { 'add-line': 'line added', 'replace-line': 'line changed', 'remove-line': 'line removed' } as const;

export function lineEditInWords(plan: Plan, { type, zone, planting }: LineEdit): string {
  return `${zoneName(plan, zone)}, ${plantingName(plan, planting)}: ${LINE_EDITS[type]}`;
}

function changeInWords(change: { readonly name?: string | undefined }): string {
  const { name, ...rest } = change;
  const fields = Object.keys(rest).map((field) => fieldsInWords([field]));
  const renamed = name === undefined ? [] : [`renamed “${shortText(name)}”`];
  return listed([...renamed, ...(fields.length === 0 ? [] : [`${listed(fields)} changed`])]);
}
