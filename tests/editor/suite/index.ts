// Runs inside the extension host; the editor calls run() and takes a rejection for failure.
import { editorTests } from './editor-tests.ts';

export async function run(): Promise<void> {
  let failed = 0;
  for (const [index, [title, body]] of editorTests.entries()) {
    try {
      await body();
      console.log(`ok - ${title}`);
    } catch (error) {
      failed += 1;
      console.log(`not ok - ${title}: ${error instanceof Error ? error.message : error}`);
      if (index === 0) break; // Without the extension every other test would only wait.
    }
  }
  if (failed > 0) throw new Error(`${failed} of ${editorTests.length} failed`);
}
