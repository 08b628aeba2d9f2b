'use client';

import { useMemo, useState } from 'react';
import { currencySign } from '@/lib/format/money';
import { priceEditText } from '@/lib/format/price-edit-text';
import { changeHeads } from '@/lib/format/words/before-after';
import { PRICES } from '@/lib/format/words/price-changes';
import { BeforeAfter } from '../before-after/before-after';
import { changeText } from '../before-after/table-text';
import button from '../button.module.css';
import { PricePicker } from '../price-picker/price-picker';
import { PriceRuler } from '../price-ruler/price-ruler';
import { Said } from '../said';
import { type DeskFigures, deskFigures } from './desk-figures';
import { type DeskRuler, type DeskScope, deskRuler } from './desk-ruler';
import { FigureField } from './figure-field';
import {
  chosenOf,
  editsOf,
  type Moves,
  movesQuery,
  putBack,
  readableQuery,
  without,
  withStep,
  withTarget,
} from './moves';
import { priceChoices } from './price-choices';
import styles from './price-desk.module.css';
import { ROWS } from './rows';
import { SpokenSentence } from './spoken-sentence';
import { stepTo, targetFacts } from './target-facts';
import { useMoves } from './use-moves';
import { usePriceModel } from './use-price-model';

/** What the server has worked out already, so that the page says it before any script has run. */
export interface DeskStart {
  readonly moves: Moves;
  readonly figures: DeskFigures;
  readonly ruler: DeskRuler;
  /** Changes in the address that could not be read, in words. */
  readonly unread: readonly string[];
}

/** Price changes: the sentence, the prices that are moved, the ruler, and each dish before and after. */
export function PriceDesk({
  start,
  scope,
  modelHref,
  changeHref,
}: {
  start: DeskStart;
  scope: DeskScope;
  modelHref: string;
  /** Where the table is had as a file; the moved prices are added. */
  changeHref: string;
}) {
  const { model, failed } = usePriceModel(modelHref);
  const { moves, slide, go } = useMoves(start.moves);
  const [rows, setRows] = useState(ROWS);
  const [beyond, setBeyond] = useState<number | null>(null);
  const isStart = moves === start.moves && rows === ROWS;
  const restKey = readableQuery(movesQuery(withStep(moves, null)));
  // biome-ignore lint/correctness/useExhaustiveDependencies: the ruler rests while its own price moves, but for one typed beyond its ends
  const ruler = useMemo(
    () => (model && !isStart ? deskRuler(model, moves, scope) : start.ruler),
    [model, restKey, scope, beyond],
  );
  const figures = useMemo(
    () => (model && !isStart ? deskFigures(model, moves, scope, rows, ruler) : start.figures),
    [model, moves, scope, rows, ruler, isStart, start],
  );
  const choices = useMemo(() => (model ? priceChoices(model) : null), [model]);
  const heads = useMemo(() => changeHeads(currencySign(scope.purse)), [scope]);
  const { chosen } = figures;

  const moveTo = (value: number): void => {
    if (!model) return;
    const facts = targetFacts(model, chosenOf(moves).target);
    slide(withStep(moves, stepTo(facts, value)));
  };
  const typed = (value: number, step: Moves['list'][number]['step']): void => {
    const scale = ruler.facts?.scale;
    if (scale && (value < scale.low || value > scale.high)) setBeyond(value);
    slide(withStep(moves, step));
  };
  const isAnyMoved = moves.list.some(({ step }) => step !== null);
  return (
    <>
      <div className={styles.saying}>
        <p className={styles.lede}>
          <Said phrase={figures.sentence} />
        </p>
        <SpokenSentence phrase={figures.sentence} />
        <p className={styles.basis}>{figures.basis.join(' · ')}</p>
        {[...(isStart ? start.unread : []), ...figures.troubles].map((text) => (
          <p key={text} className={styles.trouble} role="alert">
            {text}
          </p>
        ))}
        {failed && (
          <p className={styles.trouble} role="alert">
            {PRICES.failed}
          </p>
        )}
      </div>
      <div className={styles.fields}>
        <PricePicker
          label={PRICES.pick}
          choices={choices}
          chosen={chosen.name}
          onChoose={({ key }) => {
            const found = choices?.find((each) => each.key === key);
            if (found) go(withTarget(moves, found.target));
          }}
        />
        {chosen.price !== null && (
          <FigureField
            label={PRICES.newPrice}
            unit={chosen.unit}
            text={chosen.price}
            wrong={PRICES.noFigure}
            onFigure={(value) => typed(value, { how: 'flat', to: value })}
          />
        )}
        <FigureField
          label={chosen.price === null ? PRICES.changeOnly : PRICES.change}
          unit="%"
          text={chosen.change}
          wrong={PRICES.noChange}
          onFigure={(value) =>
            typed(chosen.price === null ? value : (ruler.facts?.now ?? 0) * (1 + value / 100), {
              how: 'share',
              by: value / 100,
            })
          }
        />
        {isAnyMoved && (
          <button type="button" className={button.button} onClick={() => go(putBack(moves))}>
            {PRICES.reset}
          </button>
        )}
      </div>
      {(moves.list.length > 1 || isAnyMoved) && (
        <ul className={styles.moved} aria-label={PRICES.edits}>
          {moves.list.map((move, index) => (
            <li key={readableQuery(movesQuery({ list: [move], at: 0 }))}>
              <button
                type="button"
                className={styles.look}
                aria-pressed={index === moves.at}
                onClick={() => go({ ...moves, at: index })}
              >
                <Said phrase={figures.moved[index] ?? []} />
              </button>
              <button type="button" className={styles.back} onClick={() => go(without(moves, index))}>
                {PRICES.remove}
              </button>
            </li>
          ))}
        </ul>
      )}
      <figure className={styles.ruler}>
        {ruler.facts ? (
          <PriceRuler
            facts={ruler.facts}
            value={chosen.value}
            valueText={chosen.valueText}
            spoken={chosen.spoken}
            onMove={moveTo}
          />
        ) : (
          <p className={styles.trouble}>{PRICES.noPrice}</p>
        )}
        <figcaption className={styles.note}>{ruler.note}</figcaption>
      </figure>
      <div className={styles.table}>
        <BeforeAfter
          table={figures.table}
          heads={heads}
          href={`${changeHref}?${readableQuery(editsOf(moves).map((edit) => ['price', priceEditText(edit)]))}`}
          locale={scope.purse.locale}
          text={() =>
            changeText(
              heads,
              model ? deskFigures(model, moves, scope, Number.POSITIVE_INFINITY, ruler).table : figures.table,
            )
          }
          onMore={() => setRows(rows + ROWS * 4)}
        />
      </div>
    </>
  );
}
