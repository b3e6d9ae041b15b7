/** The size of a planting as people say it, in one field. */
import { sizesWords } from '../../language/en/sizes.ts';
import { resized } from '../../plan/resized.ts';
import type { PlanPlanting } from '../../plan/schema/plan-schema.ts';
import { textField } from './fields.ts';
import type { FormContext, FormPart } from './form-context.ts';
import { readSize } from './read-size.ts';
import { sizeRefusal } from './size-refusal.ts';
import { sizeComesTo, sizeText } from './size-text.ts';

type Sized = Pick<PlanPlanting, 'extent' | 'container' | 'assumed'> & Partial<Pick<PlanPlanting, 'lines'>>;

export function sizeField(part: FormPart<Sized>, context: FormContext) {
  const { value, key, change } = part;
  const { reader, plan } = context;
  const say = sizesWords(reader.language);
  return textField(
    {
      key: key('size'),
      words: { label: say.field.label, help: `${say.field.examples[plan.units]}. ${sizeComesTo(value, reader)}` },
      value: sizeText(value, reader),
      refuses: (text) =>
        readSize(text, value, reader) === undefined ? (around) => sizeRefusal(text, around) : undefined,
      edit: (text = '') => {
        const { extent, container = value.container } = readSize(text, value, reader) ?? value;
        return change(resized(value, { extent, container }, plan.units));
      },
    },
    context,
  );
}
