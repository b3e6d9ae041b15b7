import { describe, expect, it } from 'vitest';
import { proseIn } from './prose.ts';

/** `#{` in a sample is a gap of its template. */
const found = (text: string, path = 'src/elements/week/week-body.ts'): readonly string[] =>
  proseIn(path, text.replaceAll('#{', '${')).map((each) => each.text);

describe('is found', () => {
  it.each([
    ['two words in a literal', "export const says = 'All zones';", ['All zones']],
    ['two words with a mark between', "export const says = ['dry, (short)'];", ['dry, (short)']],
    ['two words as a key', "export const of = { 'every day': 1 };", ['every day']],
    ['a word beside a value', 'export const says = (weeks: number) => `#{weeks} weeks`;', ['… weeks']],
    ['a word in the text of a template', 'export const view = () => html`<p class="quiet">Undo</p>`;', ['Undo']],
    ['a word put into the text', "export const view = (is: boolean) => html`<p>#{is ? 'Shut' : ''}</p>`;", ['Shut']],
    [
      'a label for a screen reader',
      'export const view = () => html`<b aria-label="Close" class="on"></b>`;',
      ['Close'],
    ],
    ['a title that is put in', "export const view = () => html`<b title=#{'Close'}></b>`;", ['Close']],
    ['a placeholder without quotes', 'export const view = () => html`<input placeholder=Name />`;', ['Name']],
    ['a property that is read out', "export const name = (it: HTMLElement) => { it.title = 'Close'; };", ['Close']],
    [
      'an attribute that is set',
      "export const name = (it: Element) => it.setAttribute('aria-label', 'Shut');",
      ['Shut'],
    ],
    [
      'words within a handler',
      "export const view = () => html`<b @click=#{() => say('two words')}></b>`;",
      ['two words'],
    ],
    ['words of another script', "export const says = 'водный план';", ['водный план']],
  ])('%s', (_name, text, expected) => {
    expect(found(text)).toEqual(expected);
  });

  it('with the line that it stands on', () => {
    expect(proseIn('src/a.ts', "\n// two words\nexport const says = 'two words';")).toEqual([
      { path: 'src/a.ts', line: 3, text: 'two words' },
    ]);
  });
});

describe('is not taken for prose', () => {
  it.each([
    ['a comment', '/** Two words. */ export const none = 0; // and more words'],
    ['a code of one word', "export const state = { kind: 'short', sign: 'over-met' };"],
    ['an import', "import { a } from '../two words/a.ts'; export * from './two words.ts';"],
    ['a type', "export type Of = 'two words' | { readonly 'two words': 1 };"],
    [
      'an error for a programmer',
      'export const stop = (at: number) => { throw new RangeError(`no week #{at} there`); };',
    ],
    [
      'what an error of its own says',
      'class A extends Error { constructor(code: string) { super(`it is #{code}`); } }',
    ],
    ['the description of a symbol', "export const LARGE = Symbol('too large');"],
    ['a line of the console', "export const tell = () => console.warn('two words');"],
    ['a check of a range', "export const check = (of: number) => requireNumber('flow of the source', of);"],
    ['styles', 'export const styles = css`p { border: 1px solid red; }`;'],
    [
      'classes',
      'export const view = (of: string) => html`<p class="quiet small #{of}"><b class=#{`state #{of}`}></b></p>`;',
    ],
    ['a list of classes', "export const mark = (it: Element) => it.classList.add('two words');"],
    ['a selector', "export const all = (it: Element) => it.querySelectorAll('td runnel-name');"],
    ['a media query', "export const still = () => matchMedia('(prefers-reduced-motion: reduce)').matches;"],
    ['a comparison in a template', "export const view = (of: string) => html`<p>#{of === 'short' ? 1 : 2}</p>`;"],
    ['a sign', 'export const view = (of: string) => html`<p>#{of} &nbsp;·</p>`;'],
    ['a key made of values', 'export const key = (one: string, other: string) => `#{one} #{other}: #{one}`;'],
    ['a comment of a template', 'export const view = () => html`<!-- two words --><p></p>`;'],
  ])('%s', (_name, text) => {
    expect(found(text)).toEqual([]);
  });

  it('a source, in place or by the name of a constant', () => {
    const text = "const FAO = 'FAO-56, Table 12'; export const row = { source: FAO, by: { source: 'a page' } };";
    expect(found(text)).toEqual([]);
  });

  it('a name by language in a table of data, and only there', () => {
    const text = "export const rows = [{ id: 'corn', name: { en: 'Sweet corn', 'es-MX': 'Elote dulce' } }];";
    expect(found(text, 'src/engine/plants/crops.data.ts')).toEqual([]);
    expect(found(text)).toEqual(['Sweet corn', 'Elote dulce']);
  });
});
