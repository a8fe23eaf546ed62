/**
 * The household that the page shows: the keeper's own logbook or the demo's, and the answers to it.
 * Writing goes one way: draft -> completed here with id and clock -> checked and kept by a worker -> asked
 * again. Answers that a screen has not asked for are not computed.
 */
import { v7 as uuidVersion7 } from 'uuid';
import type {
  AnimalsAnswer,
  CupLife,
  ForecastAnswer,
  HindcastAnswer,
  Job,
  Learned,
  PlanAnswer,
  Telling,
  TodayAnswer,
} from '../../app/index.ts';
import type { Problem } from '../../foundation/index.ts';
import type { Entry, EntryDraft, Facts } from '../../logbook/index.ts';
import { dayOfClock } from '../days/calendar.ts';
import { language, t } from '../text/text.svelte.ts';
import type { Asked, Kept, News } from '../workers/questions.ts';
import { Stopped, WorkerClient } from '../workers/worker-client.ts';
import { remember, remembered } from './device-memory.ts';
import { basisOf, keepAnswers, keptAnswers } from './kept-answers.ts';
import { signature, telling } from './preferences.svelte.ts';
import { say } from './toast.svelte.ts';
import { programOf, WorkAhead } from './work-ahead.ts';

/** The same seed everywhere, so that page, command line and HTTP give the same digits. */
export const seed = 1;

const logbookKey = 'flylarder logbook';

type Wanted = 'today' | 'forecast' | 'plan' | 'lives' | 'learned' | 'hindcast' | 'animals';

class Book {
  showing = $state<'opening' | 'own' | 'demo'>('opening');
  /** Where the keeper's own entries are kept. */
  home = $state<Kept['home']>('device');
  persistent = $state(true);
  /** The device's name for the keeper's own logbook. */
  logbookName = $state('');
  unsent = $state(0);
  /** The server wants this device to be paired, or its person to sign in, before it goes on. */
  shutOut = $state(false);
  entries = $state.raw<Entry[]>([]);
  facts = $state.raw<Facts | null>(null);
  today = $state.raw<TodayAnswer | null>(null);
  /** Jobs that need no plan, shown until today's answer is there. */
  jobsBeforePlan = $state.raw<Job[]>([]);
  forecast = $state.raw<ForecastAnswer | null>(null);
  plan = $state.raw<PlanAnswer | null>(null);
  animals = $state.raw<AnimalsAnswer | null>(null);
  lives = $state.raw<CupLife[] | null>(null);
  learned = $state.raw<Learned[] | null>(null);
  hindcast = $state.raw<HindcastAnswer | null>(null);
  /** What is being computed just now. */
  busy = $state<Record<Wanted, boolean>>({
    today: false,
    forecast: false,
    plan: false,
    lives: false,
    learned: false,
    hindcast: false,
    animals: false,
  });
  fault = $state<string | null>(null);
  /** The keeper stopped a reckoning and has not asked for another. */
  isStopped = $state(false);
  on = $state(dayOfClock(new Date()));

  /** Checks and keeps entries; never busy with models, so that writing is always quick. */
  readonly logbook = new WorkerClient(
    () => this.entries,
    (news) => this.#heard(news),
  );
  readonly quick = new WorkerClient(() => this.entries);
  readonly slow = new WorkerClient(() => this.entries);
  readonly #ahead = new WorkAhead(() => this.entries);
  #own: Entry[] = [];
  #fresh = new Set<Wanted>();

  async open(): Promise<void> {
    const base = new URL('.', location.href).href;
    const kept = await this.logbook.ask('open', { base, remembered: remembered(logbookKey) });
    remember(logbookKey, kept.logbook);
    this.home = kept.home;
    this.logbookName = kept.logbook;
    this.persistent = kept.persistent;
    this.#own = kept.entries;
    await this.#show('own', this.#own);
  }

  /** True when there is nothing to show yet: no animals and no cups. */
  get isEmpty(): boolean {
    return this.facts !== null && this.facts.groups.length === 0 && this.facts.cultures.length === 0;
  }

  async enterDemo(): Promise<void> {
    const drafts = await this.quick.ask('demo', { on: this.on, language: language() });
    await this.#show(
      'demo',
      drafts.map((draft) => this.#completed(draft, t('demo.by'))),
    );
  }

  async leaveDemo(): Promise<void> {
    await this.#show('own', this.#own);
  }

  /**
   * Writes what happened. The problems say why nothing was written; none means it is safe.
   * @param done what the undo line says; `undone` is called when it was taken back.
   * @param by whose entries they are, when not this device's person's.
   */
  async record(drafts: EntryDraft[], done?: string, undone?: () => void, by = signature()): Promise<Problem[]> {
    const entries = drafts.map((draft) => this.#completed(draft, by));
    const problems = await this.#checkedAndKept(entries);
    if (problems.length > 0) return problems;
    await this.#added(entries);
    if (done) say(done, () => void this.undo(entries).then(undone));
    return [];
  }

  async #checkedAndKept(entries: Entry[]): Promise<Problem[]> {
    try {
      const problems = await this.logbook.ask('check', { entries });
      return problems.length > 0 ? problems : await this.#keep(entries);
    } catch (error) {
      const what = String((error as Error).message ?? error);
      return [{ where: t('frame.rejected'), found: what, expected: t('frame.rejectedHow') }];
    }
  }

  /** Takes entries back: they stay in the logbook, each followed by an amendment that voids it. */
  async undo(entries: Entry[]): Promise<void> {
    const drafts = entries.map(
      (entry) => ({ kind: 'amended', on: this.on, amends: entry.id, void: true }) as EntryDraft,
    );
    const problems = await this.record(drafts);
    say(problems.length === 0 ? t('toast.undone') : t('toast.notUndone'));
  }

  /** Adds whole entries, as from a file; those already here are left alone. */
  async takeIn(entries: Entry[]): Promise<Problem[]> {
    const known = new Set(this.#own.map((entry) => entry.id));
    const fresh = entries.filter((entry) => !known.has(entry.id));
    const refused = await this.#keep(fresh);
    if (refused.length === 0) await this.#added(fresh);
    return refused;
  }

  /** Asks for an answer unless the one at hand is still true. */
  async want(wanted: Wanted): Promise<void> {
    if (this.#fresh.has(wanted) || this.facts === null) return;
    this.#fresh.add(wanted);
    this.isStopped = false;
    const facts = this.facts;
    this.busy[wanted] = true;
    try {
      await this.#ask(wanted);
      this.fault = null;
    } catch (error) {
      // An answer that was overtaken has been asked for again; one that was stopped may be.
      if (facts === this.facts) this.#fresh.delete(wanted);
      if (!(error instanceof Stopped)) this.fault = String((error as Error).message);
    } finally {
      if (facts === this.facts) this.busy[wanted] = false;
    }
  }

  /** Ends whatever is being worked out; what is on the screen stays. */
  stop(): void {
    this.isStopped = true;
    this.quick.stop();
    this.slow.stop();
  }

  stopPlan(): void {
    this.slow.stop();
  }

  /** Another language or other degrees were chosen: sentences are asked for anew. */
  tellingMayHaveChanged(): Promise<void> {
    return this.#renewed();
  }

  /** Midnight passed while the page lay open. */
  async dayMayHaveTurned(): Promise<void> {
    const now = dayOfClock(new Date());
    if (now === this.on) return;
    this.on = now;
    await this.#renewed();
  }

  async #ask(wanted: Wanted): Promise<void> {
    const asked = { on: this.on, seed, ...telling() };
    if (wanted === 'plan') this.plan = await this.slow.ask('plan', asked);
    else if (wanted === 'animals') this.animals = await this.quick.ask('animals', asked);
    else if (wanted === 'lives') this.lives = await this.quick.ask('lives', asked);
    else if (wanted === 'learned') this.learned = await this.quick.ask('learned', asked);
    else if (wanted === 'hindcast') this.hindcast = await this.slow.ask('hindcast', asked);
    else await this.#askOrRemember(wanted, asked);
  }

  /**
   * A server has often worked the day out before the page was opened; its answer, which is the same, stands
   * in until ours comes. Without a server, or with entries that it does not have yet, nothing happens.
   */
  async #todayOfServer(asked: Asked & Required<Telling>): Promise<void> {
    if (this.showing === 'demo' || this.unsent > 0) return;
    const facts = this.facts;
    const response = await fetch(
      `api/v1/today?on=${asked.on}&seed=${asked.seed}&language=${asked.language}&degrees=${asked.degrees}`,
    ).catch(() => null);
    if (!response?.ok) return;
    const answer = (await response.json()) as TodayAnswer;
    if (facts === this.facts && !this.today) this.today = answer;
  }

  /** The two answers that the first screen shows are kept from one opening of the page to the next. */
  async #askOrRemember(wanted: 'today' | 'forecast', asked: Asked & Required<Telling>): Promise<void> {
    const basis = this.showing === 'own' ? basisOf(this.on, this.entries, programOf(asked)) : null;
    const kept = basis ? keptAnswers(basis) : {};
    if (wanted === 'today' && !kept.today) {
      void this.#todayOfServer(asked);
      if (!this.today) this.jobsBeforePlan = await this.quick.ask('jobsBeforePlan', asked);
    }
    if (wanted === 'today') this.today = kept.today ?? (await this.quick.ask('today', asked));
    else this.forecast = kept.forecast ?? (await this.slow.ask('forecast', asked));
    const answer = wanted === 'today' ? this.today : this.forecast;
    if (basis && !kept[wanted]) keepAnswers(basis, { [wanted]: answer });
    if (basis && wanted === 'forecast') this.#ahead.begin(asked);
  }

  #completed(draft: EntryDraft, by: string): Entry {
    return { id: uuidVersion7(), recordedAt: new Date().toISOString(), by, ...draft } as Entry;
  }

  async #keep(entries: Entry[]): Promise<Problem[]> {
    if (this.showing === 'demo') return [];
    const kept = await this.logbook.ask('keep', { entries });
    return kept.ok ? [] : kept.problems;
  }

  async #added(entries: Entry[]): Promise<void> {
    this.entries = [...this.entries, ...entries];
    if (this.showing === 'own') this.#own = this.entries;
    this.facts = await this.logbook.ask('append', { entries });
    this.#tellModels();
    // What was written is safe now; the answers follow.
    void this.#renewed();
  }

  #heard(news: News): void {
    if (news.news === 'waiting') this.unsent = news.unsent;
    else if (news.news === 'shutOut') this.shutOut = news.isOut;
    else if (this.showing === 'own') void this.#added(news.entries);
    else this.#own = [...this.#own, ...news.entries];
  }

  #tellModels(): void {
    this.#ahead.stop();
    this.quick.renew();
    this.slow.renew();
  }

  async #show(showing: 'own' | 'demo', entries: Entry[]): Promise<void> {
    this.entries = entries;
    this.#tellModels();
    this.jobsBeforePlan = [];
    this.today = this.forecast = this.plan = this.lives = this.learned = this.hindcast = this.animals = null;
    this.facts = await this.logbook.ask('load', { entries });
    this.showing = showing;
    await this.#renewed();
  }

  /** Answers of before are kept on screen until the new ones come. */
  async #renewed(): Promise<void> {
    const shown = [...this.#fresh];
    this.#fresh.clear();
    await Promise.all(shown.map((wanted) => this.want(wanted)));
  }
}

export const book = new Book();
