import Link from 'next/link';
import { dishCostsAnswer } from '@/lib/answers/dish-costs';
import { currencySign } from '@/lib/format/money';
import { periodName } from '@/lib/format/periods';
import { DISH_COSTS_BASIS } from '@/lib/format/words/dish-costs';
import { listHeads, listSentence } from '@/lib/format/words/dish-list';
import { classWords } from '@/lib/format/words/mix-table';
import { noSalesIn, problemState } from '@/lib/format/words/shell';
import { currentAsker } from '@/lib/session/asker';
import button from '../../../_ui/button.module.css';
import { DishList } from '../../../_ui/dish-list/dish-list';
import { dishRows } from '../../../_ui/dish-list/dish-rows';
import { Said } from '../../../_ui/said';
import { State } from '../../../_ui/state';
import { type Asked, mixOf, periodsOf, viewHref } from '../asked';
import styles from '../menu.module.css';
import { dishHref } from './asked';

/** How many dishes there are and what they cost, and all of them as a table. */
export async function ListPanel({ asked }: { asked: Asked }) {
  const [costs, periods] = await Promise.all([
    dishCostsAnswer(currentAsker(), { venue: asked.venue, month: asked.month }),
    periodsOf(asked.venue),
  ]);
  const problem = !periods.ok ? periods.problem : !costs.ok ? costs.problem : null;
  if (problem) return <State kind={problem.status === 403 ? 'denied' : 'empty'} words={problemState(problem)} />;
  if (!periods.ok || !costs.ok) return null;
  const { answer } = costs;
  const { locale, months } = periods.answer;
  if (answer.items.length + answer.extras.length === 0) {
    const latest = months.at(-1)?.month ?? null;
    const words = noSalesIn(periodName(asked.month, locale), latest, locale);
    return (
      <State kind="empty" words={words}>
        {latest && (
          <Link
            prefetch={false}
            className={`${button.button} ${button.main}`}
            href={viewHref('/menu/dishes', { ...asked, month: latest })}
          >
            {words.action}
          </Link>
        )}
      </State>
    );
  }
  const purse = { currency: answer.currency, locale };
  const path = `/api/v1/venues/${encodeURIComponent(answer.venue)}/months/${encodeURIComponent(asked.month)}`;
  return (
    <>
      <div className={styles.saying}>
        <p className={styles.lede}>
          <Said phrase={listSentence(answer.items, locale)} />
        </p>
        <p className={styles.basis}>{DISH_COSTS_BASIS.join(' · ')}</p>
      </div>
      <DishList
        rows={dishRows(answer, await classesOf(asked, answer.items), (item) => dishHref({ ...asked, item }), purse)}
        heads={listHeads(currencySign(purse))}
        locale={locale}
        href={`${path}/dish-costs`}
      />
    </>
  );
}

/** The class of every item in words: in the whole menu, or, for what stands in none of it, in its own section. */
async function classesOf(
  asked: Asked,
  items: readonly { readonly item: string; readonly section: string | null }[],
): Promise<ReadonlyMap<string, string>> {
  const classes = new Map<string, string>();
  const add = async (section: string | null): Promise<void> => {
    const mix = await mixOf(asked.venue, asked.month, section);
    if (!mix.ok) return;
    for (const item of mix.answer.items) if (!classes.has(item.item)) classes.set(item.item, classWords(item));
  };
  await add(null);
  const sections = new Set(items.flatMap(({ item, section }) => (classes.has(item) ? [] : (section ?? []))));
  for (const section of sections) await add(section);
  return classes;
}
