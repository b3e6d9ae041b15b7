/** The long work that a worker takes over, by name: from plain data to plain data, in steps, the same as a page would do it. */
import { climateSteps } from '../../../exchange/weather-take/take-climate.ts';
import { yearsOfPlan } from './years-of-plan.ts';

export const WORKER_TASKS = { years: yearsOfPlan, climate: climateSteps };

type Tasks = typeof WORKER_TASKS;

export type TaskName = keyof Tasks;
export type TaskArguments<Name extends TaskName> = Parameters<Tasks[Name]>;
export type TaskSteps<Name extends TaskName> = ReturnType<Tasks[Name]>;
