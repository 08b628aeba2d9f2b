'use client';

import type { KeyboardEvent } from 'react';
import type { DishCostAnswer } from '@/lib/answers/dish-cost-shape';
import type { Purse } from '@/lib/format/money';
import { meanWords, recipeWords, spanWords, WORKING, workingName } from '@/lib/format/words/cost-working';
import { printedSheet } from '@/lib/format/working-sheet';
import { Said } from '../said';
import styles from './cost-working.module.css';
import { useWorking } from './use-working';
import { WorkingLines } from './working-lines';

/** The working of one figure, opened in place below it. Escape closes it from anywhere inside. */
export function CostWorking({
  id,
  item,
  href,
  purse,
  onClose,
}: {
  id: string;
  item: string;
  href: string;
  purse: Purse;
  onClose: () => void;
}) {
  const [reading, again] = useWorking(href);
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key !== 'Escape') return;
    event.stopPropagation();
    onClose();
  };
  return (
    <section id={id} className={styles.working} aria-label={workingName(item)} onKeyDown={onKeyDown}>
      <button type="button" className={styles.close} onClick={onClose}>
        {WORKING.close}
      </button>
      {reading.stands === 'reading' && (
        <p className={styles.waiting} role="status">
          {WORKING.reading}
        </p>
      )}
      {reading.stands === 'failed' && (
        <div role="alert">
          <p>{reading.why}</p>
          <button type="button" className={styles.again} onClick={again}>
            {WORKING.tryAgain}
          </button>
        </div>
      )}
      {reading.stands === 'read' && <Worked answer={reading.answer} purse={purse} />}
    </section>
  );
}

function Worked({ answer, purse }: { answer: DishCostAnswer; purse: Purse }) {
  const { inOneLine, rows, total } = printedSheet(answer, purse);
  const { period, recipe } = answer;
  const isBatch = answer.kind === 'component';
  return (
    <>
      {inOneLine && (
        <p className={styles.sum}>
          <Said phrase={inOneLine} />
        </p>
      )}
      {recipe && <p className={styles.note}>{recipeWords(recipe, isBatch, purse.locale)}</p>}
      {period && (
        <>
          <p className={styles.note}>{meanWords(period, answer, purse)}</p>
          <ul className={styles.spans}>
            {spanWords(period, purse).map((words) => (
              <li key={words}>{words}</li>
            ))}
          </ul>
        </>
      )}
      {ownIssues(answer).map(({ text }) => (
        <p key={text} className={styles.missing}>
          {text}
        </p>
      ))}
      <WorkingLines rows={rows} total={total} label={isBatch ? WORKING.batchCost : WORKING.plateCost} />
    </>
  );
}

/** What is missing of the dish itself; what is missing of a line stands beside the line. */
function ownIssues(answer: DishCostAnswer): DishCostAnswer['issues'] {
  const isWhole = answer.plateCost !== null && !answer.estimated;
  return isWhole ? [] : answer.issues.filter(({ about }) => about === answer.item);
}
