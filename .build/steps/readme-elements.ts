import type { ElementDeclaration } from './elements-manifest.ts';

const START = '<!-- elements: written by the build from the class comments -->';
const END = '<!-- /elements -->';

/** A README with the part between its two markers made anew. */
export function withElementsSection(readme: string, elements: readonly ElementDeclaration[]): string {
  const start = readme.indexOf(START);
  const end = readme.indexOf(END);
  if (start < 0 || end < start) throw new Error(`README.md has no part between ${START} and ${END}.`);
  return `${readme.slice(0, start + START.length)}\n\n${elementsSection(elements)}\n\n${readme.slice(end)}`;
}

function elementsSection(elements: readonly ElementDeclaration[]): string {
  return [
    '| Element | What it shows | Attributes | Events |',
    '| --- | --- | --- | --- |',
    ...elements.map(
      ({ tagName, summary, attributes = [], events = [] }) =>
        `| [\`${tagName}\`](web-types/elements/${tagName}.md) | ${summary} | ${codes(attributes)} | ${codes(events)} |`,
    ),
    '',
    'What they mean:',
    '',
    ...meanings(elements.flatMap(({ attributes = [] }) => attributes)),
    '',
    'Custom properties, set on the page or on anything around an element:',
    '',
    ...meanings(elements.flatMap(({ cssProperties = [] }) => cssProperties)),
  ].join('\n');
}

interface Term {
  readonly name: string;
  readonly description?: string;
  readonly default?: string;
}

/** Line breaks in a cell only between names, so that no name is cut. */
const codes = (terms: readonly Term[]): string => terms.map(({ name }) => `\`${name}\``).join(' ');

/** One line a name, with the sentence that stands where it is declared first. */
function meanings(terms: readonly Term[]): readonly string[] {
  const first = new Map<string, Term>();
  for (const term of terms) if (!first.has(term.name)) first.set(term.name, term);
  return [...first.values()].map(({ name, description = '', default: preset }) => {
    const value = preset === undefined || preset === "''" ? '' : ` (\`${preset.replaceAll("'", '')}\`)`;
    return `- \`${name}\`${value}: ${description.replaceAll(/\s+/g, ' ')}`;
  });
}
