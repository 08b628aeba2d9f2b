import { currencySign } from '@/lib/format/money';
import { eventsWords, periodHeads } from '@/lib/format/words/dish-periods';
import { periodFacts } from '../../../../_ui/dish-periods/period-facts';
import { periodRows } from '../../../../_ui/dish-periods/period-rows';
import { PeriodsPicture } from '../../../../_ui/dish-periods/periods-picture';
import { PeriodsTable } from '../../../../_ui/dish-periods/periods-table';
import { periodsOf } from '../../asked';
import { type DishAsked, dishOf } from '../asked';

/** What changed since the period before, and how the dish was through the periods. */
export async function PeriodsPanel({ asked }: { asked: DishAsked }) {
  const [dish, periods] = await Promise.all([dishOf(asked.venue, asked.month, asked.item), periodsOf(asked.venue)]);
  if (!dish.ok || !periods.ok) return null;
  const { answer } = dish;
  const purse = { currency: answer.currency, locale: periods.answer.locale };
  const rows = periodRows(answer, purse);
  const path = `/api/v1/venues/${encodeURIComponent(answer.venue)}/months/${encodeURIComponent(asked.month)}`;
  return (
    <>
      {answer.periods.some(({ onSale }) => onSale) && (
        <>
          <PeriodsPicture facts={periodFacts(answer, purse, (row) => eventsWords(answer.menuEvents, row, purse))} />
          <PeriodsTable
            rows={rows}
            heads={periodHeads(currencySign(purse), answer.kind === 'extra')}
            href={`${path}/dishes/${encodeURIComponent(answer.item)}`}
          />
        </>
      )}
    </>
  );
}
