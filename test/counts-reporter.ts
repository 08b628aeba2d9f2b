import { writeFileSync } from 'node:fs';
import type { Reporter, TestModule } from 'vitest/node';

/** Writes "N passed, N failed, N skipped" to the file named by TEST_COUNTS, for whoever runs the suite. */
export default class CountsReporter implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], errors: readonly unknown[]): void {
    const file = process.env.TEST_COUNTS;
    if (!file) return;
    const count = { passed: 0, failed: errors.length, skipped: 0 };
    for (const module of modules) {
      let ran = 0;
      for (const test of module.children.allTests()) {
        ran += 1;
        const { state } = test.result();
        count[state === 'pending' ? 'skipped' : state] += 1;
      }
      if (ran === 0 && module.state() === 'failed') count.failed += 1; // the file itself could not be read
    }
    writeFileSync(file, `${count.passed} passed, ${count.failed} failed, ${count.skipped} skipped\n`);
  }
}
