/** What a process of a facility counts of the requests that it answers. */
import { Counters, Durations, exposition, gauge, processFamilies } from './open-metrics.ts';

/** Upper bounds of the classes of answering times, seconds. */
const bounds = [0.005, 0.02, 0.1, 0.5, 2, 10] as const;
const methods = new Set(['GET', 'HEAD', 'POST', 'OPTIONS', 'PUT', 'DELETE', 'PATCH']);

export class Metrics {
  private readonly answers = new Counters();
  private readonly durations = new Durations(bounds);
  private readonly openHouseholds: () => number;

  constructor(openHouseholds: () => number) {
    this.openHouseholds = openHouseholds;
  }

  answered(method: string, status: number, seconds: number): void {
    // A stranger's invented methods must not make ever more series.
    this.answers.add(`method="${methods.has(method) ? method : 'other'}",code="${status}"`);
    this.durations.add(seconds);
  }

  /** The text of one scrape. */
  text(): string {
    return exposition(
      this.answers.family('flylarder_http_requests', 'Requests answered.'),
      this.durations.family('flylarder_http_request_duration_seconds', 'Time to the answer.'),
      gauge('flylarder_open_households', 'Households held in memory.', this.openHouseholds()),
      processFamilies(),
    );
  }
}
