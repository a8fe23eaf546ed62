/** When cups fail and when it is seen; how often is learned. Common practice, no source. */

/** Failures come between these ages in days: mould early, mites late. */
export const failureAges = { from: 4, until: 30 };
/** A keeper who feeds every day notices a dead cup within days. */
export const failureNoticedDays = 3;
