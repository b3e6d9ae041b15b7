/** The parts without which an edit says nothing: plain JavaScript can leave one out. */
import { foundOf } from '../reading/issue.ts';
import { recordIn } from '../reading/loose.ts';
import { WHOLE_PLAN } from '../reading/place.ts';
import type { Edit } from './edit.ts';
import { refuse } from './find.ts';

type Part = 'text' | 'group' | 'list';

const ZONE_WEEK = { zone: 'text', week: 'text' } as const;
const PLANTING = { zone: 'text', planting: 'text' } as const;

/** By kind of edit: which of its fields name something, are a group of fields or a list. What they hold is checked with the plan. */
const PARTS: { readonly [Type in Edit['type']]: Readonly<Record<string, Part>> } = {
  'set-minutes': ZONE_WEEK,
  'set-minutes-run': ZONE_WEEK,
  'set-week-run': ZONE_WEEK,
  'close-week': ZONE_WEEK,
  'set-open-days': { ...PLANTING, week: 'text' },
  'set-note': ZONE_WEEK,
  'set-choice': ZONE_WEEK,
  'set-day-run': { zone: 'text', day: 'text' },
  'set-week-rain': { week: 'text' },
  'set-week-eto': { week: 'text' },
  'set-week-note': { week: 'text' },
  'set-meter': { day: 'text' },
  'set-day-weather': { day: 'text' },
  'change-day-weather': { day: 'text', change: 'group' },
  'set-forecast': { issued: 'text' },
  'set-climate': { climate: 'group' },
  'set-departure': { from: 'text' },
  'rename-plan': {},
  'set-assumed': {},
  'set-plan-notes': {},
  'set-season': { season: 'group' },
  'change-site': { change: 'group' },
  'change-supply': { change: 'group' },
  'set-what-if': { name: 'text' },
  'convert-units': {},
  'add-zone': { zone: 'group' },
  'change-zone': { zone: 'text', change: 'group' },
  'remove-zone': { zone: 'text' },
  'move-zone': { zone: 'text' },
  'add-planting': { zone: 'text', planting: 'group' },
  'change-planting': { ...PLANTING, change: 'group' },
  'remove-planting': PLANTING,
  'move-planting': { ...PLANTING, toZone: 'text' },
  'add-line': { ...PLANTING, line: 'group' },
  'replace-line': { ...PLANTING, line: 'group' },
  'remove-line': PLANTING,
  together: { edits: 'list' },
};

const IS_PART: Readonly<Record<Part, (value: unknown) => boolean>> = {
  text: (value) => typeof value === 'string',
  group: (value) => recordIn(value) !== undefined,
  list: Array.isArray,
};

/** Refuses an edit that is no group of fields, and one of which a part is missing or is something else. */
export function requireParts(edit: Edit): void {
  const fields =
    recordIn(edit) ?? refuse({ path: '', code: 'edit-unknown', values: { place: WHOLE_PLAN, found: foundOf(edit) } });
  const parts = Object.hasOwn(PARTS, edit.type) ? PARTS[edit.type] : {};
  for (const [field, part] of Object.entries(parts)) {
    if (IS_PART[part](fields[field])) continue;
    refuse({ path: '', code: 'edit-incomplete', values: { field, place: WHOLE_PLAN, found: foundOf(fields[field]) } });
  }
}
