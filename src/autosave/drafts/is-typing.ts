/** Whether a key goes to a field in which a person types, which takes its own text back. */
export function isTyping(target: EventTarget | undefined): boolean {
  if (target instanceof HTMLTextAreaElement) return true;
  if (target instanceof HTMLInputElement) return TEXT_FIELDS.has(target.type);
  return target instanceof HTMLElement && target.isContentEditable;
}

const TEXT_FIELDS = new Set([
  'text',
  'search',
  'number',
  'email',
  'url',
  'tel',
  'password',
  'date',
  'time',
  'week',
  'month',
]);
