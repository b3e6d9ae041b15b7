/** Which field it is, for somebody who no longer sees it: its own label, then what it stands in, from within outwards. */
export function fieldName(field: HTMLElement, host: HTMLElement): string {
  const names = [ownName(field)];
  for (let inside = parentOf(field); inside !== undefined && inside !== host; inside = parentOf(inside)) {
    names.push(groupName(inside));
  }
  const shown = names.map((name) => name.replaceAll(/\s+/g, ' ').trim());
  return shown.filter((name, index) => name !== '' && name !== shown[index - 1]).join(', ');
}

function ownName(field: HTMLElement): string {
  const [label] = 'labels' in field ? ((field.labels as NodeListOf<HTMLLabelElement> | null) ?? []) : [];
  return field.getAttribute('aria-label') ?? (label && labelWords(label)) ?? '';
}

/** Without the unit and whatever else the label holds beside the field. */
function labelWords(label: HTMLLabelElement): string {
  const words = label.querySelector('.label')?.textContent;
  const texts = [...label.childNodes].filter((node) => node instanceof Text);
  return words ?? texts.map(({ data }) => data).join(' ');
}

/** A fieldset by its legend, a part that folds by its name. Other groups say nothing. */
function groupName(element: Element): string {
  if (element instanceof HTMLFieldSetElement) return element.querySelector('legend')?.textContent ?? '';
  if (!(element instanceof HTMLDetailsElement)) return '';
  return element.querySelector(':scope > summary .part-name')?.textContent ?? '';
}

/** The next element outwards, out of shadow trees as well. */
function parentOf(element: Element): Element | undefined {
  const root = element.getRootNode();
  return element.parentElement ?? (root instanceof ShadowRoot ? root.host : undefined);
}
