/** Told already, by element. */
const told = new WeakMap<Element, Set<string>>();

/** Tells whoever makes the page what is wrong with it, in the console, once for each element and message. */
export function warnDeveloper(element: Element, message: string): void {
  const before = told.get(element) ?? new Set();
  told.set(element, before);
  if (before.has(message)) return;
  before.add(message);
  console.warn(`Runnel: ${message}`, element);
}
