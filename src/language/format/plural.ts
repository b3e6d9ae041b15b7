/** Which form of a word a number takes in a language: `1 week`, `2 weeks`; by the plural rules of Unicode CLDR, through `Intl`. */

/** The forms that a language has; English has `one` and `other`. */
export type Forms = { readonly [Rule in Exclude<Intl.LDMLPluralRule, 'other'>]?: string } & { readonly other: string };

const rules = new Map<string, Intl.PluralRules>();

/** The form for a number, without the number. */
export function pluralForm(count: number, forms: Forms, locale: string): string {
  let rule = rules.get(locale);
  if (rule === undefined) {
    rule = new Intl.PluralRules(locale);
    rules.set(locale, rule);
  }
  return forms[rule.select(count)] ?? forms.other;
}
