export type { Body, Foil, HeatCase, Stretch, Surface } from './case'
