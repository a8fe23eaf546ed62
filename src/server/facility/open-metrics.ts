/** The OpenMetrics text format, version 1.0.0: families of counters, gauges and histograms. */

export const openMetricsType = 'application/openmetrics-text; version=1.0.0; charset=utf-8';

/** The text of one scrape. */
export function exposition(...families: string[][]): string {
  return [...families.flat(), '# EOF', ''].join('\n');
}

export function family(name: string, type: 'counter' | 'gauge' | 'histogram', help: string, lines: string[]): string[] {
  return [`# TYPE ${name} ${type}`, `# HELP ${name} ${help}`, ...lines];
}

export function gauge(name: string, help: string, value: number): string[] {
  return family(name, 'gauge', help, [`${name} ${value}`]);
}

/** What every process says of itself. */
export function processFamilies(): string[] {
  const { rss } = process.memoryUsage();
  const { user, system } = process.cpuUsage();
  const seconds = [`process_cpu_seconds_total ${(user + system) / 1e6}`];
  return [
    ...gauge('process_resident_memory_bytes', 'Memory in use.', rss),
    ...family('process_cpu_seconds', 'counter', 'Processor time.', seconds),
  ];
}

/** Counts by their labels. */
export class Counters {
  private readonly counts = new Map<string, number>();

  add(labels: string): void {
    this.counts.set(labels, (this.counts.get(labels) ?? 0) + 1);
  }

  family(name: string, help: string): string[] {
    return family(
      name,
      'counter',
      help,
      [...this.counts].map(([labels, count]) => `${name}_total{${labels}} ${count}`),
    );
  }
}

/** How often something took how long. */
export class Durations {
  private readonly bounds: readonly number[];
  private readonly classes: number[];
  private seconds = 0;

  /** @param bounds upper bounds of the classes, seconds, rising. */
  constructor(bounds: readonly number[]) {
    this.bounds = bounds;
    this.classes = new Array<number>(bounds.length + 1).fill(0);
  }

  add(seconds: number): void {
    const at = this.bounds.findIndex((bound) => seconds <= bound);
    const place = at < 0 ? this.bounds.length : at;
    this.classes[place] = (this.classes[place] as number) + 1;
    this.seconds += seconds;
  }

  family(name: string, help: string): string[] {
    let sum = 0;
    const buckets = [...this.bounds, Number.POSITIVE_INFINITY].map((bound, i) => {
      sum += this.classes[i] as number;
      return `${name}_bucket{le="${Number.isFinite(bound) ? decimal(bound) : '+Inf'}"} ${sum}`;
    });
    return family(name, 'histogram', help, [...buckets, `${name}_count ${sum}`, `${name}_sum ${this.seconds}`]);
  }
}

/** The standard's way of writing a bound: with a decimal point, also for whole numbers. */
function decimal(value: number): string {
  return Number.isInteger(value) ? `${value}.0` : String(value);
}
