/** What water costs: asked for where there is a price. */
import type { TemplateResult } from 'lit';
import { gardenPlaceWords } from '../../language/en/garden-place.ts';
import type { PlanSupply } from '../../plan/schema/plan-schema.ts';
import type { FieldTable } from './field-table.ts';
import type { FormContext, FormPart } from './form-context.ts';
import { tickedPart } from './ticked-part.ts';

type Price = NonNullable<PlanSupply['price']>;

const PRICE_FIELDS: FieldTable<Price, FormContext> = {
  amount: { kind: 'number' },
  per: { kind: 'number', quantity: 'volume' },
  currency: { kind: 'text' },
};

/** As water is sold: by the thousand gallons, and by the cubic meter. */
const BEGUN: Readonly<Record<FormContext['plan']['units'], Price>> = {
  us: { amount: 0, per: 1000, currency: 'USD' },
  metric: { amount: 0, per: 1000, currency: 'EUR' },
};

export function priceFields(supply: FormPart<Pick<PlanSupply, 'price'>>, context: FormContext): TemplateResult {
  const say = gardenPlaceWords(context.reader.language).supply;
  const begun = BEGUN[context.plan.units];
  return tickedPart(
    { whole: supply, field: 'price', words: say.price, begun, table: PRICE_FIELDS, tableWords: say },
    context,
  );
}
