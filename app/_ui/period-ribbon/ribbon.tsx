import type { Route } from 'next';
import type { PeriodsAnswer } from '@/lib/answers/periods-shape';
import { monthAbbreviation, monthName } from '@/lib/format/periods';
import { chosenState, monthFigure, monthLinkName, RIBBON, ribbonLine } from '@/lib/format/words/ribbon';
import { PeriodRibbon, type RibbonMonth } from './period-ribbon';
import styles from './period-ribbon.module.css';
import { ribbonBars, ribbonStart } from './ribbon-bars';

const SHOWN = 18;
const SHOWN_NARROW = 12;
const BARS_PX = 40;
/** Lower down the name of the line would touch the row below it. */
const LOWEST_KEY_PX = 30;

/** The months of a venue over the page, the chosen one opening onto the sheet below it. */
export function Ribbon({
  periods,
  chosen,
  hrefOf,
}: {
  periods: PeriodsAnswer;
  chosen: string | null;
  hrefOf: (month: string) => Route;
}) {
  const { months, locale } = periods;
  const at = months.findIndex(({ month }) => month === chosen);
  const chosenAt = at < 0 ? null : at;
  const start = ribbonStart(months.length, chosenAt, SHOWN);
  const shown = months.slice(start, start + SHOWN);
  const narrowStart = ribbonStart(shown.length, chosenAt === null ? null : chosenAt - start, SHOWN_NARROW);
  const line = periods.targetFoodCostPct ?? meanFoodCost(shown);
  const { lineY, bars } = ribbonBars(
    shown.map(({ foodCostPct }) => foodCostPct),
    line ?? 0,
    BARS_PX,
  );
  const cells = shown.map((month, index): RibbonMonth => {
    const [year = '', number] = month.month.split('-');
    return {
      month: month.month,
      href: hrefOf(month.month),
      name: monthLinkName(month, locale),
      short: monthAbbreviation(month.month, locale),
      figure: monthFigure(month, locale),
      year: index === 0 || number === '01' ? year : null,
      narrowYear: index === narrowStart && index > 0 && number !== '01' ? year : null,
      bar: bars[index] ?? null,
      hollow: !month.closed,
      closed: month.closed,
      wideOnly: index < narrowStart || index >= narrowStart + SHOWN_NARROW,
    };
  });
  const before = months[start - 1];
  const after = months[start + SHOWN];
  const now = chosenAt === null ? undefined : months[chosenAt];
  return (
    <section className="wrap" aria-label={RIBBON.region}>
      <div className={styles.ribbon}>
        <div className={styles.row}>
          <div className={styles.key} aria-hidden="true">
            <span className={styles.keyLine}>
              {line !== null && (
                <span style={{ top: Math.min(lineY, LOWEST_KEY_PX) }}>
                  {ribbonLine(line, periods.targetFoodCostPct !== null, locale)}
                </span>
              )}
            </span>
            <span>{RIBBON.foodCost}</span>
            <span>{RIBBON.month}</span>
          </div>
          <PeriodRibbon
            months={cells}
            chosen={chosen}
            lineY={lineY}
            earlier={before ? hrefOf(before.month) : null}
            later={after ? hrefOf(after.month) : null}
          />
          <div className={styles.said}>
            {now && (
              <>
                <b>{monthName(now.month, locale)}</b>
                <span>{chosenState(now, locale)}</span>
                <span>{RIBBON.byRecipe}</span>
              </>
            )}
          </div>
        </div>
      </div>
    </section>
  );
}

/** What the bars stand on where the venue has set no target: the mean of the months shown. */
function meanFoodCost(months: PeriodsAnswer['months']): number | null {
  const known = months.flatMap(({ foodCostPct }) => foodCostPct ?? []);
  return known.length === 0 ? null : known.reduce((sum, cost) => sum + cost, 0) / known.length;
}
