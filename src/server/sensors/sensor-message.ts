/** One reading on its way in, from whichever door. */
export interface SensorMessage {
  place: string;
  celsius: number;
  /** Instant; now when left out. */
  atMs?: number;
}
