import { describe, expect, it } from 'vitest';
import { cupEnding, moisture } from './cup-work.ts';
import { cupEndingAnswer, moistureAnswer } from './kitchen/cup-work-answers.ts';

const where = (result: { ok: boolean; problems?: { where: string }[] }) =>
  result.ok ? 'accepted' : (result.problems ?? []).map((p) => p.where).join('; ');

describe('the end of a cup', () => {
  it('is told in steps, in both languages', () => {
    const [en, de] = (['en', 'de'] as const).map((language) => cupEnding({ reason: 'mites', language }));
    if (!en?.ok || !de?.ok) throw new Error('refused');
    expect(cupEndingAnswer.parse(en.value)).toEqual(en.value);
    expect(en.value.reuse).toEqual([]);
    expect(en.value.steps.map((s) => s.step)).toEqual(de.value.steps.map((s) => s.step));
    expect(en.value.steps[1]?.text).toBe('Freeze it for 48 hours at about -18 °C.');
    expect(de.value.steps[1]?.text).toBe('48 Stunden bei etwa -18 °C einfrieren.');
  });
  it('needs nothing for a cup given away, and refuses a reason that no entry can give', () => {
    const given = cupEnding({ reason: 'given' });
    expect(given.ok && given.value.steps).toEqual([]);
    expect(where(cupEnding({ reason: 'bored' }))).toBe('reason');
  });
});

describe('moisture', () => {
  it('by touch and by weight, with the rescue in words', () => {
    const wet = moisture({ touch: 'runs', hasLarvae: false });
    if (!wet.ok) throw new Error('refused');
    expect(moistureAnswer.parse(wet.value)).toEqual(wet.value);
    expect(wet.value.rescue[0]?.text).toBe('Stir in a spoonful of dry mix and let it swell.');
    const dry = moisture({ firstDayMassG: 170, nowMassG: 110, mediumMassG: 120, language: 'de' });
    expect(dry.ok && [dry.value.verdict, dry.value.lostShare]).toEqual(['dry', 0.5]);
  });
  it('refuses an unknown touch and missing weights', () => {
    expect(where(moisture({ touch: 'sticky' }))).toBe('touch');
    expect(where(moisture({ nowMassG: 100 }))).toBe('question');
    expect(where(moisture({ firstDayMassG: 100, nowMassG: -1, mediumMassG: 80 }))).toBe('nowMassG');
  });
});
