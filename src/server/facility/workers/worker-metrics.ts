/** What a worker counts of its jobs. */
import { Counters, Durations, exposition, gauge, processFamilies } from '../open-metrics.ts';

/** `done`: answers are kept. `needless`: another worker was first. `failed`: tried again later. */
export type JobOutcome = 'done' | 'needless' | 'failed';

/** Upper bounds of the classes of a job's time, seconds. */
const bounds = [0.1, 0.5, 2, 10, 60, 300] as const;

export class WorkerMetrics {
  private readonly jobs = new Counters();
  private readonly durations = new Durations(bounds);

  ended(outcome: JobOutcome, seconds: number): void {
    this.jobs.add(`outcome="${outcome}"`);
    this.durations.add(seconds);
  }

  /** The text of one scrape. @param waiting jobs in the queue. */
  text(waiting: number): string {
    return exposition(
      this.jobs.family('flylarder_jobs', 'Jobs ended.'),
      this.durations.family('flylarder_job_duration_seconds', 'Time a job took.'),
      gauge('flylarder_jobs_waiting', 'Jobs in the queue, of all workers.', waiting),
      processFamilies(),
    );
  }
}
