/** Registers an element unless the name is taken: a page may load the kit twice, or in two versions. */
export function define(tag: string, element: CustomElementConstructor): void {
  const registry = globalThis.customElements;
  if (registry !== undefined && registry.get(tag) === undefined) registry.define(tag, element);
}
