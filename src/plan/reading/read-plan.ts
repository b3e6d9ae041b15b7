/** A plan from the text of a file. */

import { requireText } from '../require-argument.ts';
import type { Migration } from '../versions/migrated.ts';
import { MIGRATIONS } from '../versions/migrations.ts';
import { checkPlan, type ReadResult } from './check-plan.ts';
import type { Expectation, Fault, Found } from './fault.ts';
import { foundOf } from './issue.ts';
import { jsonFault } from './json-fault.ts';
import type { Place } from './place.ts';

/** A garden of a thousand zones with every week set by hand stays below a third of it. */
export const MOST_CHARACTERS = 30_000_000;

/**
 * Reads a plan file. It is taken whole or not at all: every fault is listed, and no text makes it throw.
 * What is no text throws a TypeError; `checkPlan` takes objects.
 * `migrations`: the steps from older versions; left out, those of this kit.
 */
export function readPlan(text: string, migrations: readonly Migration[] = MIGRATIONS): ReadResult {
  requireText('text', text);
  if (text.length > MOST_CHARACTERS) {
    return refused({ code: 'too-long', values: { most: MOST_CHARACTERS } }, text.length);
  }
  // A byte order mark is no part of the text (RFC 8259, section 8.1).
  const json = text.startsWith('\uFEFF') ? text.slice(1) : text;
  if (json.trim() === '') return refused({ code: 'empty-file', values: {} }, undefined);
  const parsed = parse(json);
  return parsed.ok ? checkPlan(parsed.value, migrations) : notJson(json);
}

function parse(json: string): { readonly ok: true; readonly value: unknown } | { readonly ok: false } {
  try {
    return { ok: true, value: JSON.parse(json) };
  } catch {
    return { ok: false };
  }
}

function notJson(json: string): ReadResult {
  const fault = jsonFault(json);
  if (fault === undefined) return refused({ code: 'not-a-plan', values: {} }, foundOf(json));
  const { line, column, found, expected } = fault;
  return refused({ code: 'not-json', values: { expected } }, found, { line, column });
}

function refused({ code, values }: Expectation, found: Found, at: Pick<Place, 'line' | 'column'> = {}): ReadResult {
  const place: Place = { part: 'file', fields: [], ...at };
  return { ok: false, faults: [{ path: '', code, values: { ...values, place, found } } as Fault] };
}
