import Link from 'next/link';
import { Fragment } from 'react';
import { MODEL_SOURCE } from '@/lib/format/words/classes';
import {
  DISH,
  dishBasis,
  dishHead,
  dishSentences,
  dishState,
  dishSum,
  isRoundedApart,
  latestWith,
} from '@/lib/format/words/dish';
import { problemState, reading } from '@/lib/format/words/shell';
import button from '../../../../_ui/button.module.css';
import styles from '../../../../_ui/dish/dish.module.css';
import { DishSum } from '../../../../_ui/dish/dish-sum';
import { Said } from '../../../../_ui/said';
import { State } from '../../../../_ui/state';
import { periodsOf, viewHref } from '../../asked';
import menu from '../../menu.module.css';
import { type DishAsked, dishHref, dishOf, tryPriceHref } from '../asked';

/** What a dish is, its sum and its sentences; where there is no answer, why, and what to do. */
export async function HeadPanel({ asked }: { asked: DishAsked }) {
  const [dish, periods] = await Promise.all([dishOf(asked.venue, asked.month, asked.item), periodsOf(asked.venue)]);
  const problem = !periods.ok ? periods.problem : !dish.ok ? dish.problem : null;
  if (problem) {
    return (
      <>
        <h1 className={`${styles.name} ${styles.alone}`}>{asked.item}</h1>
        <State kind={problem.status === 403 ? 'denied' : 'empty'} words={problemState(problem)}>
          <Link
            prefetch={false}
            className={`${button.button} ${button.main}`}
            href={viewHref('/menu/dishes', { ...asked, section: null })}
          >
            {DISH.allDishes}
          </Link>
        </State>
      </>
    );
  }
  if (!periods.ok || !dish.ok) return null;
  const { answer } = dish;
  const purse = { currency: answer.currency, locale: periods.answer.locale };
  const latest = answer.onSale ? null : latestWith(answer.periods);
  return (
    <>
      <p className={styles.kind}>
        {dishHead(answer, purse.locale).map((phrase, index) => (
          <Fragment key={String(phrase[0])}>
            {index > 0 && ' · '}
            <Said phrase={phrase} />
          </Fragment>
        ))}
      </p>
      <h1 className={styles.name}>{answer.item}</h1>
      {answer.onSale ? (
        <>
          <DishSum terms={dishSum(answer, purse)} apart={isRoundedApart(answer)} />
          <div className={styles.saying}>
            <p className={menu.lede}>
              <Said phrase={dishSentences(answer, purse)} />
            </p>
            <p className={menu.basis}>{dishBasis(answer, MODEL_SOURCE).join(' · ')}</p>
            {answer.figures?.netPrice && (
              <p className={menu.onward}>
                <Link prefetch={false} href={tryPriceHref(asked, answer.item)}>
                  {DISH.tryPrice}
                </Link>
              </p>
            )}
          </div>
        </>
      ) : (
        <State kind="empty" words={dishState(answer, latest, purse.locale)}>
          {latest && (
            <Link
              prefetch={false}
              className={`${button.button} ${button.main}`}
              href={dishHref({ ...asked, month: latest })}
            >
              {dishState(answer, latest, purse.locale).action}
            </Link>
          )}
        </State>
      )}
    </>
  );
}

export function HeadWait() {
  return (
    <div className={menu.saying}>
      <p className={menu.lede} aria-hidden="true">
        <span className="awaited" style={{ width: '32em' }} /> <span className="awaited" style={{ width: '28em' }} />
      </p>
      <p className={menu.basis} role="status">
        {reading('the sales and recipes')}
      </p>
    </div>
  );
}
