/** How batches are made: at least so much at once, kept for so many days, the day of making being the first. */
export interface BatchTerms {
  readonly smallest: number;
  readonly days: number;
}

/** What was made, what was thrown, and what stood at the end. */
export interface BatchRun {
  readonly made: number;
  readonly thrown: number;
  readonly left: number;
}

/** Less than this share of a smallest batch is rounding, neither a need nor a stock. */
const CRUMB = 1e-9;

/**
 * Day by day: the oldest is used first; when it runs out, a batch is made of at least the smallest, more where the day still needs
 * more; at the close, what has been kept for its days is thrown. It begins with nothing in store.
 *
 * Use and terms by day; a day without terms uses nothing.
 */
export function runBatches(use: ArrayLike<number>, termsOf: (day: number) => BatchTerms | null): BatchRun {
  let store: { amount: number; readonly lastDay: number }[] = [];
  let made = 0;
  let thrown = 0;
  for (let day = 0; day < use.length; day++) {
    const terms = termsOf(day);
    let need = terms === null ? 0 : (use[day] ?? 0);
    const crumb = CRUMB * Math.max(terms?.smallest ?? 0, need);
    for (const batch of store) {
      const taken = Math.min(batch.amount, need);
      batch.amount -= taken;
      need -= taken;
    }
    if (terms !== null && need > crumb) {
      const batch = Math.max(terms.smallest, need);
      made += batch;
      store.push({ amount: batch - need, lastDay: day + terms.days - 1 });
    }
    thrown += store.reduce((sum, { amount, lastDay }) => sum + (lastDay <= day && amount > crumb ? amount : 0), 0);
    store = store.filter(({ amount, lastDay }) => lastDay > day && amount > crumb);
  }
  return { made, thrown, left: store.reduce((sum, { amount }) => sum + amount, 0) };
}
