/** A plan from the text of a file. */

import type { Migration } from '../versions/migrated.ts';
import { MIGRATIONS } from '../versions/migrations.ts';
import { shortText } from '../words/short-text.ts';
import { checkPlan, type ReadResult } from './check-plan.ts';
import { jsonFault } from './json-fault.ts';

/** A garden of a thousand zones with every week set by hand stays below a third of it. */
export const MOST_CHARACTERS = 30_000_000;

const WHOLE = { path: '', where: 'The file' };

/**
 * Reads a plan file. It is taken whole or not at all: every fault is listed, and no text makes it throw.
 * `migrations`: the steps from older versions; left out, those of this kit.
 */
export function readPlan(text: string, migrations: readonly Migration[] = MIGRATIONS): ReadResult {
  if (text.length > MOST_CHARACTERS) {
    return refused({ value: `${text.length} characters`, expected: `at most ${MOST_CHARACTERS} characters` });
  }
  // A byte order mark is no part of the text (RFC 8259, section 8.1).
  const json = text.startsWith('\uFEFF') ? text.slice(1) : text;
  if (json.trim() === '') return refused({ value: 'an empty file', expected: 'a plan' });
  const parsed = parse(json);
  return parsed.ok ? checkPlan(parsed.value, migrations) : refused(brokenJson(json));
}

function parse(json: string): { readonly ok: true; readonly value: unknown } | { readonly ok: false } {
  try {
    return { ok: true, value: JSON.parse(json) };
  } catch {
    return { ok: false };
  }
}

function brokenJson(json: string): { readonly where?: string; readonly value: string; readonly expected: string } {
  const fault = jsonFault(json);
  if (fault === undefined) return { value: `“${shortText(json)}”`, expected: 'a plan as JSON' };
  const { line, column, found, expected } = fault;
  return { where: `The file, line ${line}, column ${column}`, value: found, expected };
}

function refused(fault: { readonly where?: string; readonly value: string; readonly expected: string }): ReadResult {
  return { ok: false, faults: [{ ...WHOLE, ...fault }] };
}
