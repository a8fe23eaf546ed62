/** `sensors/mqtt.json` of the household's folder: the keeper's broker, and which topic is which place. */
import { join } from 'node:path';
import { z } from 'zod';
import { temperatureUnits } from '../../app/index.ts';
import { failed, ok, type Result } from '../../foundation/index.ts';
import { readPrivateFile } from '../access/private-file.ts';

const settings = z.strictObject({
  url: z.string().regex(/^mqtts?:\/\/.+/, { error: 'mqtt://HOST:1883 or mqtts://HOST:8883' }),
  username: z.string().optional(),
  password: z.string().optional(),
  topics: z
    .array(
      z.strictObject({
        /** As MQTT has it: + for one level, # for all below. */
        topic: z.string().min(1).max(300),
        /** Names and numbers joined by points, such as sensors.0.temperature; none when the message is a number. */
        path: z.string().max(200).optional(),
        place: z.string().min(1).max(80),
        unit: z.enum(temperatureUnits).optional(),
      }),
    )
    .min(1)
    .max(1000),
});

export type MqttSettings = z.infer<typeof settings>;

/** Null when there is no such file. A password is never repeated in a problem. */
export function readMqttSettings(folder: string): Result<MqttSettings | null> {
  const file = join(folder, 'sensors', 'mqtt.json');
  const text = readPrivateFile(file);
  if (text === null) return ok(null);
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return failed({ where: file, found: 'text that is not JSON', expected: 'a JSON object with url and topics' });
  }
  const checked = settings.safeParse(value);
  if (checked.success) return ok(checked.data);
  return failed(
    ...checked.error.issues.map(({ path, message }) => ({
      where: `${file}, ${path.join('.') || 'the whole'}`,
      found: 'something else',
      expected: message,
    })),
  );
}
