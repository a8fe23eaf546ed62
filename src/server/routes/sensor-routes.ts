/** Where sensors send their readings, each with a token of its own. */
import { createRoute, z } from '@hono/zod-openapi';
import { bodyLimit } from 'hono/body-limit';
import { failed, ok, type Result } from '../../foundation/index.ts';
import type { Api, ApiContext } from '../api-context.ts';
import { problemResponse, problemResponses } from '../problem-answer.ts';

const mostReadings = 1000;
const mostBodyBytes = 128 * 1024;

const reading = z.strictObject({
  temperatureC: z.number(),
  at: z.iso.datetime({ offset: true }).optional().openapi({ description: 'Instant; now when left out' }),
});

const readingsRoute = createRoute({
  method: 'post',
  path: '/sensors/readings',
  summary: "A sensor's readings; they become four entries a day",
  description:
    'Authorization: Bearer TOKEN, made by `flylarder sensors add NAME PLACE`. What no room can have is left out and counted.',
  request: {
    body: {
      required: true,
      content: {
        'application/json': {
          schema: z.union([reading, z.strictObject({ readings: z.array(reading).min(1).max(mostReadings) })]),
        },
      },
    },
  },
  responses: {
    200: {
      description: 'How many were kept, and why others were not',
      content: {
        'application/json': {
          schema: z.object({
            kept: z.int(),
            leftOut: z.array(
              z.object({ where: z.string(), found: z.string(), expected: z.string(), readings: z.int() }),
            ),
          }),
        },
      },
    },
    ...problemResponses,
    401: { ...problemResponses[400], description: 'No token, or one that is not known' },
    413: { ...problemResponses[400], description: `The body is larger than ${mostBodyBytes} bytes` },
  },
});

const tooLarge = bodyLimit({
  maxSize: mostBodyBytes,
  onError: (c) =>
    problemResponse(c, 413, [
      { where: 'body', found: 'a body that is too large', expected: `at most ${mostReadings} readings` },
    ]),
});

interface LeftOut {
  where: string;
  found: string;
  expected: string;
  readings: number;
}

export function addSensorRoutes(api: Api, context: ApiContext): void {
  api.use('/sensors/readings', tooLarge);
  api.openapi(readingsRoute, (c) => {
    const sensor = sensorOf(context, c.req.header('authorization'));
    if (!sensor.ok) return c.json({ problems: sensor.problems }, 401);
    const body = c.req.valid('json');
    const leftOut = new Map<string, LeftOut>();
    let kept = 0;
    for (const { temperatureC, at } of 'readings' in body ? body.readings : [body]) {
      const atMs = at === undefined ? {} : { atMs: Date.parse(at) };
      const taken = sensor.value.take({ celsius: temperatureC, ...atMs });
      if (taken.ok) kept += 1;
      else for (const problem of taken.problems) count(leftOut, problem);
    }
    return c.json({ kept, leftOut: [...leftOut.values()] }, 200);
  });
}

type Take = (reading: { celsius: number; atMs?: number }) => Result<null>;

function sensorOf({ sensors }: ApiContext, header: string | undefined): Result<{ take: Take }> {
  const token = /^Bearer (.+)$/.exec(header ?? '')?.[1];
  const sensor = sensors?.register.withToken(token);
  if (sensors && sensor) return ok({ take: (reading) => sensors.take({ ...reading, place: sensor.place }) });
  const found = token === undefined ? 'no token' : 'a token that is not known';
  return failed({ where: 'Authorization', found, expected: 'Bearer and the token of `flylarder sensors add`' });
}

function count(leftOut: Map<string, LeftOut>, problem: Omit<LeftOut, 'readings'>): void {
  const known = leftOut.get(problem.expected);
  if (known) known.readings += 1;
  else leftOut.set(problem.expected, { ...problem, readings: 1 });
}
