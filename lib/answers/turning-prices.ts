import { moneyText } from '../format/money-text';
import { noSuchGoods } from '../format/words/price-edits';
import { PRICE_UNITS } from '../format/words/price-reports';
import { noSuchModel } from '../format/words/problems';
import { PRICED_MODELS } from '../model/price-model/class-axes';
import { turningPrices } from '../reports/turning-prices';
import type { Asker } from '../session/asker';
import { alike } from './alike';
import { periodWritten } from './period-written';
import { type PricedAsked, pricedPeriod } from './priced-period';
import { type Answered, answered, refused } from './problem';
import type { TurningPricesAnswer } from './turning-prices-shape';

export interface TurningPricesAsked extends PricedAsked {
  readonly ingredient: string;
  /** Null: the first model. */
  readonly model: string | null;
}

/** At which price of an ingredient each dish changes class, the same for command and HTTP. */
export async function turningPricesAnswer(
  asker: Asker,
  asked: TurningPricesAsked,
): Promise<Answered<TurningPricesAnswer>> {
  const by = PRICED_MODELS.find((known) => known === (asked.model ?? PRICED_MODELS[0]));
  if (by === undefined) {
    const words = noSuchModel(asked.model ?? '', PRICED_MODELS);
    return refused(400, words, [{ name: 'model', value: asked.model, text: words.detail }]);
  }
  const period = await pricedPeriod(asker, asked);
  if (!period.ok) return period;
  const { model, costed } = period.answer;
  const turning = turningPrices(model, asked.ingredient, by);
  if (turning === null) {
    const names = model.goods.map(({ name }) => name);
    const words = noSuchGoods(asked.ingredient, alike(asked.ingredient, names));
    return refused(404, words, [{ name: 'ingredient', value: asked.ingredient, text: words.detail }]);
  }
  const money = (amount: number | null) => (amount === null ? null : moneyText(amount, costed.venue.currency));
  const ingredient = turning.goods.name;
  const unit = PRICE_UNITS[turning.goods.unit];
  const priceNow = money(turning.priceNow);
  return answered({
    ...periodWritten(period.answer),
    model: by,
    ...{ ingredient, unit, priceNow },
    items: turning.items.map(({ item, turningPrice, classNow, classBeyond }) => ({
      item: item.name,
      section: item.section,
      ...{ ingredient, unit, priceNow },
      turningPrice: money(turningPrice),
      ...{ classNow, classBeyond },
    })),
  });
}
