/** Small changes of plain data that leave it as it is, the same object, where nothing changes. */
import { sameData } from '../same-data.ts';
import type { Change } from './edit.ts';

/** Named fields replaced; a field given as `undefined` is left out from now on. What says the same stays the same object. */
export function changed<Whole extends object>(whole: Whole, change: Change<Whole>): Whole {
  const news = Object.entries(change).filter(([key, value]) => !sameData(ownField(whole, key), value));
  return replaced(whole, Object.fromEntries(news) as Change<Whole>);
}

/** The same for fields that are known to be new where they are other objects. */
export function replaced<Whole extends object>(whole: Whole, change: Change<Whole>): Whole {
  const entries = Object.entries(change);
  if (entries.every(([key, value]) => value === ownField(whole, key))) return whole;
  const next = Object.entries({ ...whole, ...change }).filter(([, value]) => value !== undefined);
  return Object.fromEntries(next) as Whole;
}

function ownField(whole: object, key: string): unknown {
  return ownValue(whole as Readonly<Record<string, unknown>>, key);
}

/** What a record has under a key of its own, whatever its prototype has. */
export function ownValue<Value>(record: Readonly<Record<string, Value>> | undefined, key: string): Value | undefined {
  return record && Object.hasOwn(record, key) ? record[key] : undefined;
}

/** One key of a record set, or taken out where the value is `undefined`; `undefined` where nothing is left. */
export function withKey<Value>(
  record: Readonly<Record<string, Value>> | undefined,
  key: string,
  value: Value | undefined,
): Readonly<Record<string, Value>> | undefined {
  if (sameData(ownValue(record, key), value)) return record;
  if (value !== undefined) return { ...record, [key]: value };
  return fromEntries(Object.entries(record ?? {}).filter(([other]) => other !== key));
}

/** The record without one key; `undefined` where nothing is left. */
export function withoutKey<Value>(
  record: Readonly<Record<string, Value>> | undefined,
  key: string,
): Readonly<Record<string, Value>> | undefined {
  return withKey<Value>(record, key, undefined);
}

/** `undefined` where there are none. */
export function fromEntries<Value>(
  entries: readonly (readonly [string, Value])[],
): Readonly<Record<string, Value>> | undefined {
  return entries.length === 0 ? undefined : Object.fromEntries(entries);
}

export function replacedAt<Item>(list: readonly Item[], index: number, item: Item): readonly Item[] {
  return list[index] === item ? list : list.with(index, item);
}

/** An index outside the list is its nearest end; left out, the end. */
export function insertedAt<Item>(list: readonly Item[], item: Item, index = list.length): readonly Item[] {
  return list.toSpliced(Math.min(list.length, Math.max(0, Math.trunc(index))), 0, item);
}

export function removedAt<Item>(list: readonly Item[], index: number): readonly Item[] {
  return list.toSpliced(index, 1);
}

/** Moved within the list to an index of the list as it will be. */
export function movedTo<Item>(list: readonly Item[], from: number, to: number): readonly Item[] {
  const moved = insertedAt(removedAt(list, from), list[from] as Item, to);
  return moved.every((item, index) => item === list[index]) ? list : moved;
}
