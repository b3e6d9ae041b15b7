/** Documents, tables and links with something of them made wrong, the same ones for a seed. */
import { uniformRandom } from '../../src/engine/random.ts';

export interface Chance {
  /** A whole number from 0 to `below` - 1. */
  readonly nat: (below: number) => number;
  readonly pick: <Item>(items: readonly Item[]) => Item;
}

export function chanceOf(seed: number): Chance {
  const random = uniformRandom(seed);
  const nat = (below: number) => Math.floor(random() * below);
  return { nat, pick: <Item>(items: readonly Item[]) => items[nat(items.length)] as Item };
}

/** What may stand anywhere in its place. */
const JUNK: readonly unknown[] = [
  ...[null, true, false, [], {}, [[]], { kind: 'area' }, [null], 'x'.repeat(20_000)],
  ...[
    '',
    ' ',
    '0',
    'NaN',
    '__proto__',
    'constructor',
    'toString',
    '=1+1',
    '<b>',
    '\u202eabc',
    '\u200b',
    'a\tb',
    'a\r\nb',
  ],
  ...['2027-02-30', '2027-06-07', '1899-12-31', '2200-01-01', '2027-06-07T00:00', '9999-99-99', '😀', '\ud83d'],
  ...[
    0,
    -0,
    1,
    -1,
    0.1,
    1e-9,
    1e-300,
    5e-324,
    0.5,
    2,
    7,
    53,
    104,
    1440,
    10_080,
    1e6,
    1e9,
    1e15,
    2 ** 53,
    1e308,
    -1e308,
  ],
];

/** Factors by which a figure may be wrong: most stay inside the bounds. */
const FACTORS = [0, 0.001, 0.01, 0.5, 0.999, 1.001, 2, 10, 1000, -1];

/** Makes up to four places of a document wrong. It is changed in place, and is plain JSON. */
export function mangle(document: object, { nat, pick }: Chance): void {
  for (let times = 1 + nat(4); times > 0; times--) {
    const parts: object[] = [];
    const visit = (part: unknown) => {
      if (typeof part !== 'object' || part === null) return;
      parts.push(part);
      for (const inner of Object.values(part)) visit(inner);
    };
    visit(document);
    const part = pick(parts) as Record<string, unknown>;
    const key = pick([...Object.keys(part), 'more']);
    const value = part[key];
    const way = nat(10);
    if (way < 5 && typeof value === 'number') set(part, key, value * pick(FACTORS));
    else if (way === 5) delete part[key];
    else if (way === 6)
      set(part, pick(['__proto__', 'constructor', 'prototype', '', 'x', key]), structuredClone(value));
    else if (way === 7) set(part, key, structuredClone(pick(parts)));
    else if (way === 8 && Array.isArray(value)) part[key] = Array.from({ length: 1 + nat(60) }, () => value[0]);
    else set(part, key, structuredClone(pick(JUNK)));
  }
}

/** As a file has it: a field of its own, whatever its name. */
function set(part: object, key: string, value: unknown): void {
  Object.defineProperty(part, key, { value, enumerable: true, configurable: true, writable: true });
}

/** Letters that mean something in JSON, in tables and in links. */
const LETTERS = [
  ...'{}[]",:;.-+=\t\n\r |\\/0129aeT\'',
  '\u0000',
  '\u00a0',
  '\u2028',
  '\ufeff',
  '\ud800',
  '"""',
  '1e999',
];

/** Up to six letters of a text made others, taken out, put in, or the rest cut off. */
export function garbled(text: string, { nat, pick }: Chance): string {
  let other = text;
  for (let times = 1 + nat(6); times > 0; times--) {
    const at = nat(other.length + 1);
    const way = nat(8);
    if (way < 4) other = other.slice(0, at) + pick(LETTERS) + other.slice(at + 1);
    else if (way < 6) other = other.slice(0, at) + pick(LETTERS) + other.slice(at);
    else if (way === 6) other = other.slice(0, at) + other.slice(at + 1 + nat(5));
    else if (nat(4) === 0) other = other.slice(0, at);
  }
  return other;
}
