import type { DishAnswer } from '@/lib/answers/dish-shape';
import { changeSheet, contributionAccount } from '@/lib/format/change-sheet';
import type { Purse } from '@/lib/format/money';
import { DISH } from '@/lib/format/words/dish';
import {
  CHANGE,
  changeHeads,
  changeTitle,
  leftIn,
  partName,
  restName,
  sameWords,
} from '@/lib/format/words/dish-change';
import styles from './dish.module.css';

type Change = NonNullable<DishAnswer['change']>;

/** What changed since the period before: the plate by what is bought, and what it left by the parts of the bridge. */
export function DishChange({ change, month, purse }: { change: Change; month: string; purse: Purse }) {
  if (change.plateCost === null && change.contribution === null) return null;
  return (
    <div className={styles.change}>
      {change.plateCost && <CostTable cost={change.plateCost} change={change} month={month} purse={purse} />}
      {change.contribution && (
        <Account contribution={change.contribution} before={change.month} after={month} purse={purse} />
      )}
    </div>
  );
}

function CostTable({
  cost,
  change,
  month,
  purse,
}: {
  cost: NonNullable<Change['plateCost']>;
  change: Change;
  month: string;
  purse: Purse;
}) {
  const { rows, rest, total } = changeSheet(cost, purse);
  if (rows.length === 0) return <p className={styles.same}>{sameWords(change.month, total.after, purse)}</p>;
  return (
    <table className={styles.table}>
      <caption>{changeTitle(change.month, purse.locale)}</caption>
      <thead>
        <tr>
          {changeHeads(change.month, month, purse).map(([name, unit], at) => (
            <th key={name} scope="col" className={at === 0 ? undefined : styles.number}>
              {name}
              <span className={styles.unit}>{unit || '\u00a0'}</span>
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map((row) => (
          <tr key={`${row.item} ${row.isEstimate}`}>
            <th scope="row">{row.isEstimate ? `${row.item}, ${DISH.estimate}` : row.item}</th>
            <Figures row={row} />
          </tr>
        ))}
        {rest && (
          <tr>
            <th scope="row" className={styles.restName}>
              {restName(rest.count, purse.locale)}
            </th>
            <Figures row={rest} />
          </tr>
        )}
        <tr className={styles.total}>
          <th scope="row">{CHANGE.total}</th>
          <Figures row={total} />
        </tr>
      </tbody>
    </table>
  );
}

function Figures({ row }: { row: { before: string; price: string; recipe: string; after: string } }) {
  return (
    <>
      <td className={styles.number}>{row.before}</td>
      <td className={`${styles.number} ${tone(row.price)}`}>{row.price}</td>
      <td className={`${styles.number} ${tone(row.recipe)}`}>{row.recipe}</td>
      <td className={styles.number}>{row.after}</td>
    </>
  );
}

/** A cost that rises is against the house, one that falls for it. */
function tone(change: string): string | undefined {
  return change.startsWith('+') ? styles.dear : change.startsWith('\u2212') ? styles.spare : '';
}

function Account({
  contribution,
  before,
  after,
  purse,
}: {
  contribution: NonNullable<Change['contribution']>;
  before: string;
  after: string;
  purse: Purse;
}) {
  const account = contributionAccount(contribution, purse);
  return (
    <table className={styles.table}>
      <caption>{CHANGE.account}</caption>
      <tbody>
        <tr className={styles.opening}>
          <th scope="row">{leftIn(before, purse.locale)}</th>
          <td className={styles.number}>{account.before}</td>
        </tr>
        {account.parts.map(({ part, figure }) => (
          <tr key={part}>
            <th scope="row">{partName(part)}</th>
            <td className={`${styles.number} ${gain(figure)}`}>{figure}</td>
          </tr>
        ))}
        <tr className={styles.total}>
          <th scope="row">{leftIn(after, purse.locale)}</th>
          <td className={styles.number}>{account.after}</td>
        </tr>
      </tbody>
    </table>
  );
}

/** More left is for the house, less against it. */
function gain(change: string): string | undefined {
  return change.startsWith('+') ? styles.spare : change.startsWith('\u2212') ? styles.dear : '';
}
