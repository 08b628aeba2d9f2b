import type { MenuMixAnswer } from '@/lib/answers/menu-mix-shape';
import { currencySign, exactMoneyFigure } from '@/lib/format/money';
import { isOnTheLine } from '@/lib/format/words/classes';
import { marginLine, markReading, popularityLine } from '@/lib/format/words/mix-plane';
import { cutNames, shortNames } from '@/lib/format/words/short-names';
import type { MarkShape } from '../mark-shape';
import type { PlaneFacts, PlaneMark } from './plane-mark';

const LONGEST_LABEL = 26;

type Item = MenuMixAnswer['items'][number];

/** Everything that the picture of a mix is drawn from; dishes whose margin is not known are not in it. */
export function planeFacts(
  mix: MenuMixAnswer,
  locale: string,
  shapes: ReadonlyMap<string | null, MarkShape>,
): PlaneFacts {
  const purse = { currency: mix.currency, locale };
  const drawn = mix.items.flatMap((item) => (item.margin === null ? [] : [{ item, margin: item.margin }]));
  const labels = cutNames(shortNames(drawn.map(({ item }) => item.item)), LONGEST_LABEL);
  const marks = drawn.map(
    ({ item, margin }, index): PlaneMark => ({
      item: item.item,
      label: labels[index] ?? item.item,
      section: item.section,
      shape: shapes.get(item.section) ?? 'circle',
      share: item.share,
      margin: Number(margin),
      popularFrom: popularFrom(item, mix),
      class: item.class,
      doubtful: isOnTheLine(item),
      spread: item.spread,
      reading: markReading(
        { ...item, margin, ownThreshold: mix.thresholds.popularity === null ? popularFrom(item, mix) : null },
        purse,
      ),
    }),
  );
  const popular = mix.items.flatMap((item) => popularFrom(item, mix) ?? []);
  const { margin } = mix.thresholds;
  const low = Math.min(...popular);
  const high = Math.max(...popular);
  return {
    marks,
    sold: mix.totals.sold,
    popularity: popular.length === 0 ? null : { low, high, ...popularityLine({ low, high }, locale) },
    margin:
      margin === null
        ? null
        : { value: Number(margin), words: marginLine(margin, purse), atAxis: exactMoneyFigure(margin, purse) },
    currencySign: currencySign(purse),
    locale,
  };
}

/** The share from which a dish is popular: one for all, or its own where dishes were on sale on different days. */
function popularFrom({ expected }: Item, { thresholds, totals }: MenuMixAnswer): number | null {
  if (thresholds.popularity !== null) return thresholds.popularity;
  return totals.sold === 0 ? null : (thresholds.popularityFactor * expected) / totals.sold;
}
