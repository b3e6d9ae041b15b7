import { expect } from 'vitest';

/** Expects the same data but for rounding: every number within a relative tolerance, everything else equal. */
export function expectClose(actual: unknown, expected: unknown, relative: number, path = ''): void {
  if (typeof expected === 'number' && typeof actual === 'number') {
    const apart = Math.abs(actual - expected);
    const scale = Math.max(Math.abs(actual), Math.abs(expected));
    if (!Object.is(actual, expected) && !(apart <= relative * scale)) expect([path, actual]).toEqual([path, expected]);
    return;
  }
  const [left, right] = [fieldsOf(actual), fieldsOf(expected)];
  if (left === undefined || right === undefined) {
    expect([path, actual]).toEqual([path, expected]);
    return;
  }
  expect([path, left.map(([key]) => key)]).toEqual([path, right.map(([key]) => key)]);
  left.forEach(([key, value], place) => {
    expectClose(value, right[place]?.[1], relative, `${path}.${String(key)}`);
  });
}

function fieldsOf(value: unknown): readonly (readonly [unknown, unknown])[] | undefined {
  if (value instanceof Map) return [...value];
  return typeof value === 'object' && value !== null ? Object.entries(value) : undefined;
}
