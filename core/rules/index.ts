export { verdicts } from './finding'
export type { Compared, Finding, NotApplicable, Outcome, Remedy, Report, Verdict, Where } from './finding'
