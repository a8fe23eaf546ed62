/**
 * The queue of jobs in the facility's database, kept by pg-boss in a schema of its own: one job a
 * household, waiting once at most. Any number of workers take from it; none takes what another has.
 */
import PgBoss from 'pg-boss';

export interface Job {
  id: string;
  household: string;
}

export interface JobQueue {
  /** Puts the household in the queue unless it waits there already. */
  ask(household: string): Promise<void>;
  /** The job that waited longest, which is this worker's from now on; null when none waits. */
  next(): Promise<Job | null>;
  done(job: Job): Promise<void>;
  failed(job: Job, error: unknown): Promise<void>;
  /** How many wait. */
  waiting(): Promise<number>;
  close(): Promise<void>;
}

const queueName = 'household-answers';
/** A job whose worker was killed is given up after so long; what it left undone is found due before that. */
const mostJobSeconds = 900;
const housekeepingSeconds = 60;
/** Jobs that are done are kept for a look for a day. */
const keptSeconds = 86_400;

/** @param onError hears of troubles of the queue's own housekeeping, which tries again by itself. */
export async function openJobQueue(url: string, onError: (error: Error) => void): Promise<JobQueue> {
  const boss = new PgBoss({
    connectionString: url,
    application_name: 'flylarder work',
    max: 3,
    schema: 'jobs',
    schedule: false,
    maintenanceIntervalSeconds: housekeepingSeconds,
    archiveCompletedAfterSeconds: keptSeconds,
    deleteAfterSeconds: keptSeconds,
  });
  boss.on('error', onError);
  await boss.start();
  // "short": of each key one job waits at most. One may run meanwhile, since the logbook grows meanwhile.
  const queue = { name: queueName, policy: 'short', retryLimit: 0, expireInSeconds: mostJobSeconds } as const;
  await boss.createQueue(queueName, queue);
  return {
    ask: async (household) => {
      await boss.send(queueName, { household }, { singletonKey: household });
    },
    next: async () => {
      const [job] = await boss.fetch<{ household: string }>(queueName);
      return job ? { id: job.id, household: job.data.household } : null;
    },
    done: (job) => boss.complete(queueName, job.id),
    failed: (job, error) => boss.fail(queueName, job.id, { message: String(error) }),
    waiting: () => boss.getQueueSize(queueName),
    close: () => boss.stop({ graceful: false }),
  };
}
