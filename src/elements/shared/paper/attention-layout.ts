/** What needs attention, with a box to tick. */
import { html } from 'lit';
import { noticesOf } from '../../../explain/notices/notices-of.ts';
import { isWorthTelling } from '../../../explain/notices/worth-telling.ts';
import { describeNotice } from '../../../language/describe-notice.ts';
import { noticesWords } from '../../../language/en/notices.ts';
import { paperWords } from '../../../language/en/paper.ts';
import type { PaperContext, PaperLayout } from './paper-block.ts';
import { title } from './table-layouts.ts';

export function attentionLayout(context: PaperContext): PaperLayout {
  const { view, reader } = context;
  const say = paperWords(reader.language);
  const words = noticesWords(reader.language);
  const notices = noticesOf(view.season).filter(isWorthTelling);
  const none = { content: html`<p>${say.noTrouble}</p>` };
  return {
    title: title(context, say.kinds.attention),
    blocks:
      notices.length === 0
        ? [none]
        : notices.map((notice) => {
            const text = describeNotice(notice, view.season, view.plan.name, reader);
            return {
              content: html`<div class="attention row"><i class="box"></i><span><b>${text.name}:</b> ${text.sentence}
                <small>${words.severity[notice.severity]}. ${text.where}. ${words.remedies[notice.remedy]}</small></span></div>`,
            };
          }),
  };
}
