export {
  climateIds,
  climateName,
  daysOf,
  monthName,
  months,
  trialYear,
  twoPeriods,
  usualGround_C,
  winterOfDin,
} from './climates'
export type { ClimateId, Month, OutsideAir } from './climates'
export { humidityClassName, humidityClasses, roomAir, roomUseName, roomUses, vapourExcess_Pa } from './rooms'
export type { HumidityClass, RoomAir, RoomUse } from './rooms'
export {
  dewPoint_C,
  humidity_pct,
  mould_pct,
  saturation_Pa,
  surfaceFactor,
  surfaceLimit_C,
  surfaceOf_C,
  vapour_Pa,
} from './saturation'
