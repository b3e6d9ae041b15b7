/** Does what the table of `transitions.ts` asks for. */
import type { Plan } from '../plan/schema/plan-schema.ts';
import type { AutosavePage } from './autosave-page.ts';
import type { AutosaveEvent, Effect, EffectOf } from './state.ts';

export interface EffectContext {
  readonly page: AutosavePage;
  readonly dispatch: (event: AutosaveEvent) => void;
  /** `save-due` is to come within that time. */
  readonly schedule: (withinMs: number) => void;
  readonly load: () => void;
  /** False where the plan is refused. */
  readonly open: (plan: Plan) => boolean;
  readonly end: () => void;
}

type Effects = { readonly [Type in Effect['type']]: (effect: EffectOf<Type>, context: EffectContext) => void };

const EFFECTS: Effects = {
  save,
  schedule: ({ withinMs }, { schedule }) => schedule(withinMs),
  load: (_, { load }) => load(),
  adopt: (effect, { page }) => page.saved?.adopt(effect.saved),
  'make-way': (_, { page, dispatch }) => {
    const fault = page.saved?.storage.moveToCopies();
    dispatch(fault === undefined ? { type: 'made-way' } : { type: 'storage-failed', fault });
  },
  open: ({ plan }, context) => {
    if (!context.open(plan)) openFailed(context);
  },
  'open-copy': ({ id, copy }, context) => {
    if (context.open(copy)) context.dispatch({ type: 'copy-opened', id, copy });
    else openFailed(context);
  },
  'open-own-plan': (_, { page }) => page.openOwnPlan(),
  'release-copy': (_, { page }) => page.saved?.releaseCopy(),
  'remove-own-copy': (_, { page }) => page.saved?.removeOwnCopy(),
  'delete-copy': ({ id }, { page }) => page.saved?.storage.copies.remove(id),
  'leave-link': (_, { page }) => page.leaveLink(),
  end: (_, { end }) => end(),
};

export function runEffect(effect: Effect, context: EffectContext): void {
  const run = EFFECTS[effect.type] as (effect: Effect, context: EffectContext) => void;
  run(effect, context);
}

function save({ plan, place, replace, next }: EffectOf<'save'>, { page: { saved }, dispatch }: EffectContext): void {
  if (saved === undefined) return;
  if (place === 'copy') {
    const fault = saved.writeCopy(plan);
    if (fault === undefined) dispatch({ type: 'saved', place, replaced: false, damage: undefined, next });
    else dispatch({ type: 'save-failed', plan, fault, next });
    return;
  }
  const written = saved.write(plan, replace);
  if (written.kind === 'blocked') dispatch({ type: 'save-blocked', plan, next });
  else if (written.kind === 'failed') dispatch({ type: 'save-failed', plan, fault: written.fault, next });
  else dispatch({ type: 'saved', place, replaced: written.replaced, damage: written.damage, next });
}

function openFailed({ page: { store }, dispatch }: EffectContext): void {
  const { faults, plan } = store.view;
  dispatch({ type: 'open-failed', faults, hasPlan: plan !== undefined });
}
