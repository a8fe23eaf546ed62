import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { followRefusal } from './device-memory.ts';
import { forgetDraft, keepDraft, keptDraft, mostDrafts } from './drafts.ts';

/** A device's memory with room for so many characters. */
function memoryOf(room: number): Storage {
  const texts = new Map<string, string>();
  return {
    getItem: (key: string) => texts.get(key) ?? null,
    removeItem: (key: string) => void texts.delete(key),
    setItem: (key: string, text: string) => {
      const others = [...texts].reduce((sum, [name, value]) => sum + (name === key ? 0 : value.length), 0);
      if (others + text.length > room) throw new DOMException('full', 'QuotaExceededError');
      texts.set(key, text);
    },
  } as unknown as Storage;
}

beforeEach(() => vi.stubGlobal('localStorage', memoryOf(5000)));
afterEach(() => vi.unstubAllGlobals());

describe('drafts', () => {
  it('come back as they were left, each under its own name', () => {
    keepDraft('a', { flies: 30 });
    keepDraft('b', { text: 'wet' });
    expect([keptDraft('a'), keptDraft('b')]).toEqual([{ flies: 30 }, { text: 'wet' }]);
    forgetDraft('a');
    expect([keptDraft('a'), keptDraft('b')]).toEqual([null, { text: 'wet' }]);
  });

  it('of forms left long ago make room', () => {
    for (let i = 0; i <= mostDrafts; i++) keepDraft(`form ${i}`, { i });
    expect(keptDraft('form 0')).toBeNull();
    expect(keptDraft('form 1')).toEqual({ i: 1 });
  });
});

describe('a full device', () => {
  it('lets go of what can be worked out again before it refuses what was typed', () => {
    localStorage.setItem('flylarder answers', 'x'.repeat(4990));
    keepDraft('a', { text: 'kept' });
    expect(keptDraft('a')).toEqual({ text: 'kept' });
  });

  it('says so, and says when it has room again', () => {
    const heard: boolean[] = [];
    const stop = followRefusal((isRefused) => heard.push(isRefused));
    keepDraft('a', { text: 'x'.repeat(6000) });
    keepDraft('a', { text: 'short' });
    stop();
    expect(heard).toEqual([false, true, false]);
    expect(keptDraft('a')).toEqual({ text: 'short' });
  });

  it('that forbids keeping at all loses nothing else', () => {
    vi.stubGlobal('localStorage', undefined);
    keepDraft('a', { flies: 1 });
    expect(keptDraft('a')).toBeNull();
  });
});
