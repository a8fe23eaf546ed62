/** Counts and times of a process in the OpenMetrics text format, version 1.0.0. */

/** Upper bounds of the classes of answering times, seconds. */
const bounds = [0.005, 0.02, 0.1, 0.5, 2, 10] as const;
const methods = new Set(['GET', 'HEAD', 'POST', 'OPTIONS', 'PUT', 'DELETE', 'PATCH']);

export class Metrics {
  private readonly answers = new Map<string, number>();
  private readonly classes = new Array<number>(bounds.length + 1).fill(0);
  private seconds = 0;
  private readonly openHouseholds: () => number;

  constructor(openHouseholds: () => number) {
    this.openHouseholds = openHouseholds;
  }

  answered(method: string, status: number, seconds: number): void {
    // A stranger's invented methods must not make ever more series.
    const labels = `method="${methods.has(method) ? method : 'other'}",code="${status}"`;
    this.answers.set(labels, (this.answers.get(labels) ?? 0) + 1);
    const at = bounds.findIndex((bound) => seconds <= bound);
    const place = at < 0 ? bounds.length : at;
    this.classes[place] = (this.classes[place] as number) + 1;
    this.seconds += seconds;
  }

  /** The text of one scrape. */
  text(): string {
    const { rss } = process.memoryUsage();
    const { user, system } = process.cpuUsage();
    return [
      ...family('flylarder_http_requests', 'counter', 'Requests answered.', this.requestLines()),
      ...family('flylarder_http_request_duration_seconds', 'histogram', 'Time to the answer.', this.timeLines()),
      ...family('flylarder_open_households', 'gauge', 'Households held in memory.', [
        `flylarder_open_households ${this.openHouseholds()}`,
      ]),
      ...family('process_resident_memory_bytes', 'gauge', 'Memory in use.', [`process_resident_memory_bytes ${rss}`]),
      ...family('process_cpu_seconds', 'counter', 'Processor time.', [
        `process_cpu_seconds_total ${(user + system) / 1e6}`,
      ]),
      '# EOF',
      '',
    ].join('\n');
  }

  private requestLines(): string[] {
    return [...this.answers].map(([labels, count]) => `flylarder_http_requests_total{${labels}} ${count}`);
  }

  private timeLines(): string[] {
    const name = 'flylarder_http_request_duration_seconds';
    let sum = 0;
    const buckets = [...bounds, Number.POSITIVE_INFINITY].map((bound, i) => {
      sum += this.classes[i] as number;
      return `${name}_bucket{le="${Number.isFinite(bound) ? decimal(bound) : '+Inf'}"} ${sum}`;
    });
    return [...buckets, `${name}_count ${sum}`, `${name}_sum ${this.seconds}`];
  }
}

/** The standard's way of writing a bound: with a decimal point, also for whole numbers. */
function decimal(value: number): string {
  return Number.isInteger(value) ? `${value}.0` : String(value);
}

function family(name: string, type: string, help: string, lines: string[]): string[] {
  return [`# TYPE ${name} ${type}`, `# HELP ${name} ${help}`, ...lines];
}
