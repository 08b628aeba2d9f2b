import { afterAll, beforeAll, expect, test } from 'vitest';
import { type Running, startProgram } from './start-program';

let program: Running;

beforeAll(async () => {
  program = await startProgram('--book', 'seed/small');
});

afterAll(() => program.stop());

async function post(query: string, body: string) {
  const address = `${program.address}/api/v1/venues/Marram%20House/intake?file=${query}`;
  const response = await fetch(address, { method: 'POST', body, headers: { 'content-type': 'text/csv' } });
  return { status: response.status, said: await response.json() };
}

// A server in front of a route may keep only the first ten megabytes of a body.
test('POST intake of 20 MB takes every row of it', async () => {
  const rows = 10_000;
  const line = `2027-01-02,Nobody knows it,1,7.25,${'x'.repeat(2_000)}\n`;
  const { status, said } = await post('sales&dryRun=1', `date,item,sold,net_revenue,note\n${line.repeat(rows)}`);
  expect([status, said.files[0].read, said.files[0].refusedRows]).toEqual([200, rows, rows]);
});

test('POST intake of more than 128 MB is refused with a sentence, and nothing is taken', async () => {
  const { status, said } = await post('sales', `date,item,sold\n${'2027-01-02,Tart,1\n'.repeat(8_000_000)}`);
  expect([status, said.detail]).toEqual([413, 'The file is larger than 128 MB. Send it in parts.']);
});
