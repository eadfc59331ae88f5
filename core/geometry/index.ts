export type { Fill, Id, Line, Region, Seasonal, Vented } from './body'
export { grid_mm, onGrid } from './point'
export type { Outline, Point } from './point'
