import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { tokenDeclarations } from '../../src/look/tokens.ts';

const page = readFileSync(new URL('../../demo/theme.html', import.meta.url), 'utf8');
const rows = [...page.matchAll(/<th scope="row"><code>(--runnel-[a-z-]+)<\/code>.*<\/tr>/g)];

describe('the page of custom properties', () => {
  const declared = [...tokenDeclarations.matchAll(/var\((--runnel-[a-z-]+)/g)].map(([, name]) => name);

  it('names each that the elements take up, and no other', () => {
    expect(declared).toHaveLength(12);
    expect(rows.map(([, name]) => name)).toEqual(declared);
  });

  it('says their colours, light and dark', () => {
    const coloured = [...tokenDeclarations.matchAll(/var\((--runnel-[a-z-]+), light-dark\((#\w+), (#\w+)\)\)/g)];
    expect(coloured).toHaveLength(10);
    for (const [, name, light, dark] of coloured) {
      const row = rows.find(([, own]) => own === name)?.[0];
      expect(row).toContain(`<td>${light}</td><td>${dark}</td>`);
    }
  });
});
