export { type ExpectedTemperature, expectedMeanC, type Hemisphere } from './expected-temperature.ts';
export {
  hourlyTemperatureC,
  type PlaceTemperature,
  type TemperatureReading,
  temperatureSdC,
} from './hourly-temperature.ts';
export { roomAnomalySdC, roomPersistence } from './anomaly.ts';
