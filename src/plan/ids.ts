/** Ids of zones and plantings, made from their names. */
import type { Plan } from './schema/plan-schema.ts';

const LONGEST = 40;

/** Words that every JavaScript object knows already. */
const RESERVED = new Set(['constructor', 'prototype']);

/**
 * An id like the name (`Raised beds` is `raised-beds`) that is not among those taken: a number is put behind it where needed.
 * A name without any Latin letter or digit becomes `kind`.
 */
export function newId(name: string, taken: ReadonlySet<string>, kind: 'zone' | 'planting'): string {
  const plain = name
    .slice(0, 4 * LONGEST)
    .normalize('NFKD')
    .toLowerCase()
    .replace(/\p{Mark}/gu, '')
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, LONGEST)
    .replace(/^-+|-+$/g, '');
  const start = plain === '' || RESERVED.has(plain) ? kind : plain;
  if (!taken.has(start)) return start;
  let count = 2;
  while (taken.has(`${start}-${count}`)) count++;
  return `${start}-${count}`;
}

export function newZoneId(plan: Plan, name: string): string {
  return newId(name, new Set(plan.zones.map(({ id }) => id)), 'zone');
}

/** Unlike any other of the plan, so that a planting can move to any zone. */
export function newPlantingId(plan: Plan, name: string): string {
  return newId(name, new Set(plan.zones.flatMap(({ plantings }) => plantings.map(({ id }) => id))), 'planting');
}
