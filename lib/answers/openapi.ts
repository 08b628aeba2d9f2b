import { z } from 'zod';
import { dishCostsShape } from './dish-costs-shape';
import { menuMixShape } from './menu-mix-shape';
import { problemShape } from './problem';
import { venuesShape } from './venues';

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
const MONTH = inPath('month', '2026-10, 2026-W41, or days A..B, the end excluded.');
const FORMAT = inQuery('format', 'csv for one line an item.');

function get(summary: string, parameters: readonly object[], shape: z.ZodType): object {
  const json = (schema: z.ZodType) => z.toJSONSchema(schema, { target: 'openapi-3.0' });
  return {
    get: {
      summary,
      parameters,
      responses: {
        200: { description: 'The answer.', content: { 'application/json': { schema: json(shape) } } },
        default: {
          description: 'Why there is none (RFC 9457).',
          content: { 'application/problem+json': { schema: json(problemShape) } },
        },
      },
    },
  };
}

/** What /api/v1 answers, in the words of the OpenAPI standard, made from the same shapes that the answers have. */
export function openApi(): object {
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
          inQuery('model', 'kasavana-smith'),
          FORMAT,
        ],
        menuMixShape,
      ),
      '/venues/{venue}/months/{month}/dish-costs': get(
        'What each dish costs and leaves, by channel.',
        [VENUE, MONTH, FORMAT],
        dishCostsShape,
      ),
    },
  };
}
