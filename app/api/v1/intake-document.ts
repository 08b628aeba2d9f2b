import { z } from 'zod';
import { problemShape } from '@/lib/answers/problem';
import { loadReportShape } from '@/lib/changes/load-report-shape';

const json = (shape: z.ZodType): object => z.toJSONSchema(shape, { target: 'openapi-3.0' });
const bytes = { schema: { type: 'string', format: 'binary' } };
const inQuery = (name: string, description: string) => ({
  name,
  in: 'query',
  required: false,
  description,
  schema: { type: 'string' },
});

/** What /api/v1 takes in, in the words of the OpenAPI standard. */
export const INTAKE_DOCUMENT = {
  '/venues/{venue}/intake': {
    post: {
      summary: 'Brings in a file of the data folder, a ZIP of it, or a workbook with a sheet a file.',
      parameters: [
        {
          name: 'venue',
          in: 'path',
          required: true,
          description: 'Name or number of the venue.',
          schema: { type: 'string' },
        },
        inQuery('file', 'Which file a CSV is: sales, recipes ...; an archive or a workbook says it itself.'),
        inQuery('source', 'On whose word sales, covers and moves are; left out: book.'),
        inQuery('days', 'A..B, both included: sales are the whole truth for these days.'),
        inQuery('dryRun', '1 says what would become of one file, and keeps nothing.'),
      ],
      requestBody: {
        required: true,
        content: {
          'text/csv': bytes,
          'application/zip': bytes,
          'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet': bytes,
        },
      },
      responses: {
        200: {
          description: 'What became of its rows; refused ones are in it, with how to mend them.',
          content: { 'application/json': { schema: json(loadReportShape) } },
        },
        default: {
          description: 'Why nothing was tried (RFC 9457).',
          content: { 'application/problem+json': { schema: json(problemShape) } },
        },
      },
    },
  },
} as const;
