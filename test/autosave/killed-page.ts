/** The page of the killed tabs, in one script: a plan that is saved, and its forms. */
import '../../src/elements/garden/define.ts';
import '../../src/elements/plan/define.ts';
