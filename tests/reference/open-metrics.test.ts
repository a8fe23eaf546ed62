/**
 * What a facility's processes say of themselves, read by the strict parser of the OpenMetrics text format 1.0
 * that the Prometheus project's Python library has (Debian: python3-prometheus-client).
 */
import { spawnSync } from 'node:child_process';
import { beforeAll, describe, expect, it } from 'vitest';
import { Metrics } from '../../src/server/facility/metrics.ts';
import { WorkerMetrics } from '../../src/server/facility/workers/worker-metrics.ts';
import { needsDebian } from './debian-program.ts';

const python = '/usr/bin/python3';
const program = `
import json, sys
from prometheus_client.openmetrics.parser import text_string_to_metric_families as read
families = [[f.name, f.type, [[s.name, s.labels, s.value] for s in f.samples]] for f in read(sys.stdin.read())]
print(json.dumps(families))`;

type Family = [name: string, type: string, samples: [string, Record<string, string>, number][]];

function read(text: string): { families: Family[]; error: string } {
  const { status, stdout, stderr } = spawnSync(python, ['-c', program], { input: text, encoding: 'utf8' });
  return { families: status === 0 ? JSON.parse(stdout) : [], error: stderr.trim().split('\n').at(-1) ?? '' };
}

beforeAll(() =>
  needsDebian('python3-prometheus-client', [python, '-c', 'import prometheus_client.openmetrics.parser']),
);

describe('the metrics', () => {
  it('of a process that answers are read as they were counted', () => {
    const metrics = new Metrics(() => 3);
    for (const seconds of [0.001, 0.02, 0.7, 60]) metrics.answered('GET', 200, seconds);
    metrics.answered('BREW"\n', 404, 0.3);
    const { families, error } = read(metrics.text());
    expect(error).toBe('');
    expect(families.map(([name, type]) => [name, type])).toEqual([
      ['flylarder_http_requests', 'counter'],
      ['flylarder_http_request_duration_seconds', 'histogram'],
      ['flylarder_open_households', 'gauge'],
      ['process_resident_memory_bytes', 'gauge'],
      ['process_cpu_seconds', 'counter'],
    ]);
    expect(families[0]?.[2]).toEqual([
      ['flylarder_http_requests_total', { method: 'GET', code: '200' }, 4],
      ['flylarder_http_requests_total', { method: 'other', code: '404' }, 1],
    ]);
    const buckets = families[1]?.[2].filter(([name]) => name.endsWith('_bucket'));
    expect(buckets?.map(([, { le }, count]) => [le, count])).toEqual([
      ['0.005', 1],
      ['0.02', 2],
      ['0.1', 2],
      ['0.5', 3],
      ['2.0', 4],
      ['10.0', 4],
      ['+Inf', 5],
    ]);
    expect(families[1]?.[2].find(([name]) => name.endsWith('_sum'))?.[2]).toBeCloseTo(61.021, 9);
  });

  it('of a worker are too, before and after its first job', () => {
    const metrics = new WorkerMetrics();
    expect(read(metrics.text(0)).error).toBe('');
    metrics.ended('done', 1.5);
    metrics.ended('failed', 0.2);
    const { families, error } = read(metrics.text(7));
    expect(error).toBe('');
    const samples = families.flatMap(([, , all]) => all);
    expect(samples).toContainEqual(['flylarder_jobs_total', { outcome: 'done' }, 1]);
    expect(samples).toContainEqual(['flylarder_jobs_waiting', {}, 7]);
    expect(samples).toContainEqual(['flylarder_job_duration_seconds_count', {}, 2]);
  });

  it('would be refused with a bucket too few, a name without _total, or no end', () => {
    const text = new Metrics(() => 0).text();
    for (const spoilt of [
      text.replace(/.*le="\+Inf".*\n/, ''),
      text.replace('process_cpu_seconds_total', 'process_cpu_seconds'),
      text.replace('# EOF\n', ''),
    ]) {
      expect(spoilt).not.toBe(text);
      expect(read(spoilt).error).toMatch(/ValueError/);
    }
  });
});
