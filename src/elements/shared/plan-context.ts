/** Through this every view reads the plan that it stands in. */
import { createContext } from '@lit/context';
import type { PlanView } from '../../store/plan-view.ts';

export const planContext = createContext<PlanView>(Symbol('runnel-plan'));
