import { noSuchElementText } from '../elements/shared/page-language.ts';
import { warnDeveloper } from '../elements/shared/warn-developer.ts';
import { ELEMENT_LOADERS } from './element-loaders.ts';

const PREFIX = 'runnel-';

/** Whether an element is named like one of the kit, and neither the kit nor the page defines it. */
function isMisspelt({ localName }: Element): boolean {
  return localName.startsWith(PREFIX) && !ELEMENT_LOADERS.has(localName);
}

/** Says of an element or a div whose name there is not what there is: where it stands, before what it holds, and in the console. */
function sayMisspelt(element: HTMLElement, what: string, known: readonly string[]): void {
  const text = noSuchElementText(element, what, known.join(', '));
  if (element.firstChild?.textContent === text) return;
  element.prepend(text);
  warnDeveloper(element, `there is no ${what}. There is: ${known.join(', ')}.`);
}

/** Looks for misspelt names where `found` looks. */
export function sayAllMisspelt(found: (selector: string) => readonly HTMLElement[]): void {
  const tags = [...ELEMENT_LOADERS.keys()];
  for (const element of found(':not(:defined)').filter(isMisspelt)) {
    sayMisspelt(
      element,
      `<${element.localName}>`,
      tags.map((tag) => `<${tag}>`),
    );
  }
  for (const div of found('[data-runnel]')) {
    const name = div.dataset['runnel'] ?? '';
    if (ELEMENT_LOADERS.has(PREFIX + name)) continue;
    sayMisspelt(
      div,
      `data-runnel="${name}"`,
      tags.map((tag) => tag.slice(PREFIX.length)),
    );
  }
}
