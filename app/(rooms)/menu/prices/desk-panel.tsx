import { periodName } from '@/lib/format/periods';
import { NOTHING_PRICED, unreadText } from '@/lib/format/words/price-changes';
import { problemState } from '@/lib/format/words/shell';
import { deskFigures } from '../../../_ui/price-desk/desk-figures';
import { deskRuler } from '../../../_ui/price-desk/desk-ruler';
import { movesOf } from '../../../_ui/price-desk/moves';
import { PriceDesk } from '../../../_ui/price-desk/price-desk';
import { ROWS } from '../../../_ui/price-desk/rows';
import { dearestGoods } from '../../../_ui/price-desk/target-facts';
import { State } from '../../../_ui/state';
import type { Asked } from '../asked';
import { pricedOf } from './asked-prices';

/** The moved prices and what they come to, worked out here first, so that the page says it all without a script. */
export async function DeskPanel({ asked, texts, at }: { asked: Asked; texts: readonly string[]; at: string | null }) {
  const priced = await pricedOf(asked.venue, asked.month);
  if (!priced.ok) {
    return <State kind={priced.problem.status === 403 ? 'denied' : 'empty'} words={problemState(priced.problem)} />;
  }
  const { model, venue } = priced.answer;
  const first = dearestGoods(model);
  if (first === null || model.items.length === 0) return <State kind="empty" words={NOTHING_PRICED} />;
  const { currency, locale } = model.venue;
  const scope = { period: periodName(asked.month, locale), purse: { currency, locale } };
  const { moves, refused } = movesOf(texts, at, first);
  const ruler = deskRuler(model, moves, scope);
  const months = `/api/v1/venues/${encodeURIComponent(venue)}/months/${encodeURIComponent(asked.month)}`;
  return (
    <PriceDesk
      start={{
        moves,
        figures: deskFigures(model, moves, scope, ROWS, ruler),
        ruler,
        unread: refused.map(unreadText),
      }}
      scope={scope}
      modelHref={`${months}/price-model`}
      changeHref={`${months}/price-change`}
    />
  );
}
