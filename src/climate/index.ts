export { type ExpectedTemperature, expectedMeanC, type Hemisphere } from './expected-temperature.ts';
export {
  hourlyTemperatureC,
  meanAnomalySdC,
  meanTemperatureSdC,
  ordinaryMeanC,
  type PlaceTemperature,
  type TemperatureReading,
  temperatureSdC,
} from './hourly-temperature.ts';
export { roomAnomalySdC, roomPersistence } from './anomaly.ts';
export { guessLoggerForm } from './logger/guess-form.ts';
export type { LoggerColumn, LoggerDoubt, LoggerForm, LoggerGuess } from './logger/logger-form.ts';
export { type LeftOut, LoggerReader, type LoggerReport, readLogger, type SetAside } from './logger/logger-reader.ts';
export { DayBins, type DailyReading, leastHours } from './logger/daily-readings.ts';
export { type Delimiter, delimiters } from './logger/logger-line.ts';
export { type TemperatureUnit, temperatureUnits } from './logger/degrees-text.ts';
export { type TimeOrder, timeOrders } from './logger/time-text.ts';
export { ZoneClock } from './logger/zone-clock.ts';
export { type DegreeDayMethod, degreeDayMethods, degreeDays, type DegreeDayThresholds } from './degree-days.ts';
export { keeperLevelSdC, keeperWaveSdC } from './learned-season.ts';
export { type IntakeState, SensorIntake, type SensorReading, type SensorSpan } from './sensor-intake.ts';
export { type CupOffset, cupOffset, type CupPair } from './cup-offset.ts';
export { type HindcastError, outlookErrors } from './hindcast.ts';
