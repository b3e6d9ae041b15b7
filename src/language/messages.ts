/** Messages by the id of what they say, for what other floors state as ids and values. */
import type { Format } from './format/format.ts';

/** One message: a text, or what makes it of the values that it is about. */
export type Message<About> = string | ((format: Format, about: About) => string);

/** A message for each kind of a table of kinds: none may be missing. */
export type Messages<Kinds> = { readonly [Id in keyof Kinds]: Message<Kinds[Id]> };

/** One message, or one for each variant of a kind that has variants. */
export type VariedMessage<About> =
  | Message<About>
  | (About extends { readonly variant: infer Variant extends string }
      ? { readonly [Key in Variant]: Message<About> }
      : never);

/** The text of a message. */
export function say<About>(message: Message<About>, format: Format, about: About): string {
  return typeof message === 'string' ? message : message(format, about);
}

/** The text for one kind of a table. */
export function sayOne<Kinds, Id extends keyof Kinds>(
  messages: Messages<Kinds>,
  id: Id,
  format: Format,
  about: Kinds[Id],
): string {
  return say<Kinds[Id]>(messages[id], format, about);
}

/** The text for the variant that is given. */
export function sayVaried<About>(message: VariedMessage<About>, format: Format, about: About): string {
  const varied: Message<About> | Readonly<Record<string, Message<About>>> = message;
  if (typeof varied !== 'object') return say(varied, format, about);
  const { variant = '' } = about as { readonly variant?: string };
  return say(varied[variant] ?? '', format, about);
}
