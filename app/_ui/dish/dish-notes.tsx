import type { ReactNode } from 'react';
import type { DishAnswer } from '@/lib/answers/dish-shape';
import { moneyFigure, type Purse } from '@/lib/format/money';
import { capitalised, plainText } from '@/lib/format/phrase';
import { ADVICE, adviceSentences } from '@/lib/format/words/advice';
import { MODEL_SOURCES } from '@/lib/format/words/classes';
import { modelStandings, standingPhrase } from '@/lib/format/words/dish';
import {
  allergenNames,
  cautionWords,
  DISH_NOTES,
  developmentPhrase,
  listWords,
  lossFigure,
  lossWords,
  minutes,
  perPlatingMinute,
  turningUnit,
  unknownWords,
  workName,
} from '@/lib/format/words/dish-notes';
import { Said } from '../said';
import styles from './dish.module.css';

/** The margin beside the picture: work and loss, allergens and cautions, what it cost to develop, what is missing. */
export function DishNotes({ dish, purse }: { dish: DishAnswer; purse: Purse }) {
  const { development, issues } = dish;
  return (
    <aside className={styles.notes}>
      <WorkNote dish={dish} purse={purse} />
      <AllergenNote item={dish.item} allergens={dish.allergens} locale={purse.locale} />
      {development && (
        <Note title={DISH_NOTES.development}>
          <p>
            <Said phrase={developmentPhrase(development, purse)} />
          </p>
        </Note>
      )}
      {issues.length > 0 && (
        <Note title={DISH_NOTES.missing}>
          <ul className={styles.issues}>
            {issues.map((issue) => (
              <li key={`${issue.code} ${issue.about} ${issue.text}`}>{issue.text}</li>
            ))}
          </ul>
        </Note>
      )}
    </aside>
  );
}

/** Under the picture: where each model puts the dish, what it would take to change that, and which prices would. */
export function DishStanding({ dish, purse }: { dish: DishAnswer; purse: Purse }) {
  if (dish.standings.length === 0) return null;
  return (
    <div className={`${styles.notes} ${styles.standing}`}>
      {dish.standings.length > 0 && (
        <Note title={DISH_NOTES.standing}>
          <ul className={styles.standings}>
            {modelStandings(dish).map((standing) => (
              <li key={standing.model}>
                <Said phrase={capitalised(standingPhrase(standing, purse.locale))} />
                <span className={styles.faint}>{MODEL_SOURCES[standing.model]}</span>
              </li>
            ))}
          </ul>
          <p>{DISH_NOTES.standingNote}</p>
        </Note>
      )}
      {dish.advice && (
        <Note title={ADVICE.title}>
          <ul className={styles.cautions}>
            {adviceSentences(dish.advice, purse).map((phrase) => (
              <li key={plainText(phrase)}>
                <Said phrase={phrase} />
              </li>
            ))}
          </ul>
        </Note>
      )}
      <TurningNote turning={dish.turning} purse={purse} />
    </div>
  );
}

function Note({ title, children }: { title: string; children: ReactNode }) {
  return (
    <section>
      <h2>{title}</h2>
      {children}
    </section>
  );
}

function WorkNote({ dish: { work, smallBatch, figures }, purse }: { dish: DishAnswer; purse: Purse }) {
  if (work === null) return null;
  const amount = (value: string | null) => (value === null ? DISH_NOTES.unknown : moneyFigure(value, purse));
  const rows = [
    ...work.handsOn.map((each) => ({ name: workName('handsOn', each.grade), ...each })),
    ...work.plating.map((each) => ({ name: workName('plating', each.grade), ...each })),
  ];
  const lost = lossWords(smallBatch.components, purse.locale);
  return (
    <Note title={DISH_NOTES.labour}>
      <table className={styles.account}>
        <tbody>
          {rows.map((row) => (
            <tr key={row.name}>
              <th scope="row">{row.name}</th>
              <td>{minutes(row.minutes, purse.locale)}</td>
              <td>{amount(row.cost)}</td>
            </tr>
          ))}
          <tr>
            <th scope="row">
              {DISH_NOTES.loss}
              <span className={styles.faint}>{DISH_NOTES.lossWhere}</span>
            </th>
            <td />
            <td>{lossFigure(smallBatch.loss, purse)}</td>
          </tr>
          {figures && (
            <tr className={styles.accountTotal}>
              <th scope="row">{DISH_NOTES.afterLabour}</th>
              <td />
              <td>{amount(work.afterLabour)}</td>
            </tr>
          )}
        </tbody>
      </table>
      {work.withoutMinutes.length > 0 && <p>{`${DISH_NOTES.noMinutes} ${work.withoutMinutes.join(', ')}.`}</p>}
      {work.platingMinutes === null && <p>{DISH_NOTES.noPlating}</p>}
      {lost && (
        <p>
          <Said phrase={lost} />
        </p>
      )}
      {work.marginPerPlatingMinute && (
        <p>
          <Said phrase={perPlatingMinute(work.marginPerPlatingMinute, purse)} />
        </p>
      )}
      <p>{DISH_NOTES.energy}</p>
    </Note>
  );
}

function TurningNote({ turning, purse }: { turning: DishAnswer['turning']; purse: Purse }) {
  if (turning.length === 0) return null;
  const price = (amount: string | null, none: string) => (amount === null ? none : moneyFigure(amount, purse));
  return (
    <Note title={DISH_NOTES.turning}>
      <table className={styles.account}>
        <thead>
          <tr>
            <th scope="col">
              <span className="unseen">{DISH_NOTES.ingredient}</span>
            </th>
            <th scope="col" className={styles.turnHead}>
              {DISH_NOTES.now}
            </th>
            <th scope="col" className={styles.turnHead}>
              {DISH_NOTES.turnsAt}
            </th>
          </tr>
        </thead>
        <tbody>
          {turning.map((row) => (
            <tr key={row.ingredient}>
              <th scope="row">
                {row.ingredient}
                <span className={styles.faint}>{turningUnit(row.unit, purse)}</span>
              </th>
              <td>{price(row.priceNow, DISH_NOTES.unknown)}</td>
              <td>
                {price(row.turningPrice, DISH_NOTES.noTurning)}
                {row.classBeyond && <i className={styles.faint}>{row.classBeyond}</i>}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p>{DISH_NOTES.turningNote}</p>
    </Note>
  );
}

function AllergenNote({
  item,
  allergens,
  locale,
}: {
  item: string;
  allergens: DishAnswer['allergens'];
  locale: string;
}) {
  if (allergens === null) {
    return (
      <Note title={DISH_NOTES.contains}>
        <p>{DISH_NOTES.allergensOff}</p>
      </Note>
    );
  }
  const { contains, mayContain, unknown, cautions } = allergens;
  const isNone = contains.length + mayContain.length + unknown.length === 0;
  return (
    <>
      <Note title={DISH_NOTES.contains}>
        {contains.length > 0 && <p className={styles.said}>{allergenNames(contains)}</p>}
        {isNone && <p>{DISH_NOTES.nothingDeclared}</p>}
        {mayContain.length > 0 && (
          <p>
            <b>{DISH_NOTES.mayContain}</b> {allergenNames(mayContain)}
          </p>
        )}
        {unknown.length > 0 && (
          <p className={styles.unknown}>
            <b>{DISH_NOTES.notKnown}</b> {unknownWords(unknown, item)}
          </p>
        )}
        <p className={styles.small}>
          {listWords(allergens.list, allergens.date, locale)} {DISH_NOTES.allergenCaution}
        </p>
      </Note>
      {cautions.length > 0 && (
        <Note title={DISH_NOTES.cautions}>
          <ul className={styles.cautions}>
            {cautions.map((each) => (
              <li key={each.caution}>{cautionWords(each)}</li>
            ))}
          </ul>
        </Note>
      )}
    </>
  );
}
