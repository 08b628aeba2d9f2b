import { z } from 'zod';
import { PRICED_MODELS } from '../model/price-model/class-axes';
import { atStakeShape } from './at-stake-shape';
import { costLineShape, dishCostShape } from './dish-cost-shape';
import { dishCostsShape } from './dish-costs-shape';
import { dishShape } from './dish-shape';
import { ingredientShape, ingredientsShape, recipeShape, recipesShape } from './kitchen-shape';
import { menuMixShape } from './menu-mix-shape';
import { menuModelsShape } from './menu-models-shape';
import { priceChangeShape } from './price-change-shape';
import { priceChangeBodyShape } from './price-edit-shape';
import { problemShape } from './problem';
import { turningPricesShape } from './turning-prices-shape';
import { venuesShape } from './venues';
import { weekShape } from './week-shape';
import { yearShape } from './year-shape';

const inPath = (name: string, description: string) => ({
  name,
  in: 'path',
  required: true,
  description,
  schema: { type: 'string' },
});
const inQuery = (name: string, description: string) => ({
  name,
  in: 'query',
  required: false,
  description,
  schema: { type: 'string' },
});

const VENUE = inPath('venue', 'Name or number of the venue.');
const MONTH = inPath('month', '2026-10, 2026-W41, 2026-P10 (in the venue’s calendar), or days A..B, the end excluded.');
const KITCHEN_DATE = inQuery(
  'date',
  'The day, 2026-10-31; left out: the last day of the latest month with sales, else today.',
);
const WHOLE_MENU = inQuery('section', 'One section of the menu; left out: the whole menu.');
const FORMAT = inQuery('format', 'csv for one line an item, xlsx for a workbook; left out: json.');

const TARGET = { target: 'openapi-3.0' } as const;
const json = (schema: z.ZodType): object => z.toJSONSchema(schema, TARGET);

/** Shapes that hold themselves need a name to be spoken of by. */
const NAMED = z
  .registry<{ id: string }>()
  .add(costLineShape, { id: 'CostLine' })
  .add(dishCostShape, { id: 'DishCost' })
  .add(recipeShape, { id: 'Recipe' });
const addressOf = (name: string): string => `#/components/schemas/${name}`;

function components(): object {
  const { schemas } = z.toJSONSchema(NAMED, { ...TARGET, uri: addressOf });
  return {
    schemas: Object.fromEntries(Object.entries(schemas).map(([name, { $id: _, ...schema }]) => [name, schema])),
  };
}

function schemaOf(shape: z.ZodType): object {
  const name = NAMED.get(shape)?.id;
  return name === undefined ? json(shape) : { $ref: addressOf(name) };
}

function get(summary: string, parameters: readonly object[], shape: z.ZodType): object {
  return { get: { summary, parameters, responses: responsesOf(shape) } };
}

/** A question that is too long for an address. */
function post(summary: string, parameters: readonly object[], body: z.ZodType, shape: z.ZodType): object {
  const schema = z.toJSONSchema(body, { ...TARGET, io: 'input' });
  const requestBody = { required: true, content: { 'application/json': { schema } } };
  return { post: { summary, parameters, requestBody, responses: responsesOf(shape) } };
}

const BYTES = { type: 'string', format: 'binary' } as const;

const PROBLEM = {
  description: 'Why there is none (RFC 9457).',
  content: { 'application/problem+json': { schema: json(problemShape) } },
};

function responsesOf(shape: z.ZodType): object {
  return {
    200: { description: 'The answer.', content: { 'application/json': { schema: schemaOf(shape) } } },
    default: PROBLEM,
  };
}

/** What /api/v1 answers, in the words of the OpenAPI standard, made from the same shapes that the answers have; `more` is what it takes in. */
export function openApi(more: Readonly<Record<string, object>> = {}): object {
  return {
    openapi: '3.0.3',
    info: { title: 'Plateworth', version: '1' },
    servers: [{ url: '/api/v1' }],
    paths: {
      '/venues': get('The venues that the asker may see.', [], venuesShape),
      '/venues/{venue}/months/{month}/menu-mix': get(
        'What sells and what leaves, and how sure that is.',
        [
          VENUE,
          MONTH,
          inQuery('section', 'One section of the menu; left out: the whole menu.'),
          inQuery('setMenus', 'section (where nothing is said), or spread: over their courses.'),
          inQuery('model', 'kasavana-smith (where none is named), miller, pavesic, goal-value or labour.'),
          FORMAT,
        ],
        menuMixShape,
      ),
      '/venues/{venue}/months/{month}/models': get(
        'Where every model of menu analysis puts each dish, how sure that is, and whether they agree.',
        [VENUE, MONTH, inQuery('section', 'One section of the menu; left out: the whole menu.'), FORMAT],
        menuModelsShape,
      ),
      '/venues/{venue}/months/{month}/dish-costs': get(
        'What each dish costs and leaves, by channel.',
        [VENUE, MONTH, FORMAT],
        dishCostsShape,
      ),
      '/venues/{venue}/months/{month}/dishes/{item}': get(
        'One dish in depth: what it costs, leaves and takes, what changed and why, and through the periods.',
        [VENUE, MONTH, inPath('item', 'Name or number of a dish, set menu or extra.'), FORMAT],
        dishShape,
      ),
      '/venues/{venue}/months/{month}/week': get(
        'A week at a glance, by day, beside the four weeks before and the same week of the year before.',
        [VENUE, inPath('month', 'A week, 2026-W41; a month stands for its last one.'), FORMAT],
        weekShape,
      ),
      '/venues/{venue}/months/{month}/year': get(
        'What the menu left through the eighteen months or periods up to this one, with the changes of the menu.',
        [VENUE, MONTH, inQuery('section', 'One section of the menu; left out: the whole menu.'), FORMAT],
        yearShape,
      ),
      '/venues/{venue}/months/{month}/at-stake': get(
        'What is at stake with prices, what 1 % is worth a year, and each ingredient’s own spread.',
        [VENUE, MONTH, inQuery('by', 'ingredient, group or supplier; left out: ingredient.'), WHOLE_MENU, FORMAT],
        atStakeShape,
      ),
      '/venues/{venue}/months/{month}/price-change': {
        ...post(
          'What other prices would have done to every dish and the period; nothing is kept.',
          [VENUE, MONTH, WHOLE_MENU, FORMAT],
          priceChangeBodyShape,
          priceChangeShape,
        ),
        ...get(
          'The same with the changes in the address.',
          [VENUE, MONTH, inQuery('price', 'Double cream:+10%; once for each change.'), WHOLE_MENU, FORMAT],
          priceChangeShape,
        ),
      },
      '/venues/{venue}/months/{month}/price-model': {
        get: {
          summary:
            'All that a change of prices needs of the period, for the page: lib/model/price-model/packed-model.ts.',
          parameters: [VENUE, MONTH, WHOLE_MENU],
          responses: {
            200: {
              description: 'A gzip file with an ETag.',
              content: { 'application/octet-stream': { schema: BYTES } },
            },
            304: { description: 'What If-None-Match names still holds.' },
            default: PROBLEM,
          },
        },
      },
      '/venues/{venue}/months/{month}/turning-prices': get(
        'At which price of an ingredient each dish changes class, if nothing else moves.',
        [
          VENUE,
          MONTH,
          { ...inQuery('ingredient', 'Name of what is bought.'), required: true },
          inQuery('model', `${PRICED_MODELS.join(', ')}; left out: the first.`),
          WHOLE_MENU,
          FORMAT,
        ],
        turningPricesShape,
      ),
      '/venues/{venue}/dishes/{item}/cost': get(
        'What one dish, component, set menu, extra or ingredient costs on a day, line by line.',
        [
          VENUE,
          inPath('item', 'Name or number of the item.'),
          inQuery('date', 'The day, 2026-10-31; left out: the last day of the latest month with sales.'),
          inQuery(
            'month',
            'Instead of a date: the last day of that period on which the item was on sale, and the mean of the period.',
          ),
          inQuery('channel', 'Where it is sold; left out: dine_in, or the first of its channels.'),
          inQuery('section', 'With a month: the section in whose mix the mean stands; left out: the whole menu.'),
          FORMAT,
        ],
        dishCostShape,
      ),
      '/venues/{venue}/ingredients': get(
        'Every ingredient on a day: price, usable yield, allergens, what uses it, what is missing.',
        [VENUE, KITCHEN_DATE],
        ingredientsShape,
      ),
      '/venues/{venue}/ingredients/{item}': get(
        'One ingredient: all that is written of it, its offers with their prices, what uses it.',
        [VENUE, inPath('item', 'Name or number of the ingredient.'), KITCHEN_DATE],
        ingredientShape,
      ),
      '/venues/{venue}/recipes': get(
        'Components, dishes, set menus and extras on a day: the version in force, its cost, what uses it.',
        [VENUE, KITCHEN_DATE],
        recipesShape,
      ),
      '/venues/{venue}/recipes/{item}': get(
        'One recipe: all its versions as they are written, its cost line by line, its allergens, what uses it.',
        [
          VENUE,
          inPath('item', 'Name or number of the recipe.'),
          KITCHEN_DATE,
          inQuery('list', 'Whose list of allergens: eu or us; left out: eu.'),
        ],
        recipeShape,
      ),
      ...more,
    },
    components: components(),
  };
}
