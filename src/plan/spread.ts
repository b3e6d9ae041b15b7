/** At most `count` of some items in their order, those at the ends of equal parts: 2 of 7 days are the 4th and the 7th. */
export function spread<Item>(items: readonly Item[], count: number): readonly Item[] {
  const taken = Math.min(count, items.length);
  return Array.from({ length: taken }, (_, part) => items[Math.ceil(((part + 1) * items.length) / taken) - 1] as Item);
}
