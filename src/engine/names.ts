/**
 * A name as data: English always, any other language by its BCP 47 tag. `en-GB` stands only where it differs from `en`. Whoever
 * shows one picks the reader's (`nameIn` of the language floor).
 */
export interface Names {
  readonly en: string;
  readonly [tag: string]: string;
}
