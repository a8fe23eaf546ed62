/** Too few flies today: who is fed, who can wait, and until when. */

export interface HungryGroup {
  group: string;
  /** Flies that a full feeding takes. */
  flies: number;
  /** Days that a feeding can be put off. */
  canWaitDays: number;
  /** Days that it has been put off already. */
  overdueDays: number;
}

export interface StretchShare {
  group: string;
  flies: number;
  /** 0 none to 1 a full feeding. */
  share: number;
  verdict: 'fed' | 'part of a feeding' | 'can wait' | 'goes short';
  /** Days that it can still wait; below 0 when it has waited too long. */
  slackDays: number;
}

export interface Stretch {
  shares: StretchShare[];
  /** Flies missing for the groups that cannot wait. */
  missingFlies: number;
}

/**
 * Groups without slack come first and share alike what there is; then those with the least slack. Nobody who
 * can wait is fed before all who cannot are.
 */
export function stretch(groups: readonly HungryGroup[], available: number): Stretch {
  if (!(available >= 0)) throw new RangeError(`stretch: available ${available} is not 0 or more`);
  const slackOf = (one: HungryGroup) => one.canWaitDays - one.overdueDays;
  const urgent = groups.filter((one) => slackOf(one) <= 0);
  const wanted = urgent.reduce((sum, one) => sum + one.flies, 0);
  const urgentShare = wanted > 0 ? Math.min(1, available / wanted) : 1;
  let left = Math.max(0, available - wanted);
  const shares = [...groups]
    .sort((a, b) => slackOf(a) - slackOf(b) || (a.group < b.group ? -1 : 1))
    .map((one) => {
      const isUrgent = slackOf(one) <= 0;
      const share = isUrgent ? urgentShare : one.flies > 0 ? Math.min(1, left / one.flies) : 1;
      if (!isUrgent) left -= share * one.flies;
      return {
        group: one.group,
        flies: share * one.flies,
        share,
        verdict: verdictOf(isUrgent, share),
        slackDays: slackOf(one),
      };
    });
  return { shares, missingFlies: Math.max(0, wanted - available) };
}

function verdictOf(isUrgent: boolean, share: number): StretchShare['verdict'] {
  if (share >= 1) return 'fed';
  if (isUrgent) return 'goes short';
  return share > 0 ? 'part of a feeding' : 'can wait';
}
