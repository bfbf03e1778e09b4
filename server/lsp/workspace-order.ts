import type { OrderAnswer } from '../protocol/requests.ts';
import { orderList } from '../report/order/order-list.ts';
import { orderMarkdown } from '../report/order/order-print.ts';
import { folderOf, isInside, relativeTo } from '../workspace/location.ts';
import type { Session } from './session.ts';

/** What to have for every hub and wheel of the workspace, each as it is written; null where there is none. */
export async function workspaceOrder({ workspace, files: read, host }: Session): Promise<OrderAnswer | null> {
  // A list made while folders are still read would be short, and look whole.
  await read.loaded();
  const files: string[] = [];
  let since = host.now();
  for (const file of workspace.files()) {
    const kind = workspace.snapshot(file)?.document.kind;
    if (kind === 'hub' || kind === 'wheel') files.push(file);
    // Typing goes on meanwhile: what arrived is dealt with in between.
    if (20 < host.now() - since) {
      await new Promise<void>((resolve) => host.schedule(resolve, 0));
      since = host.now();
    }
  }
  const folder = folderAround(files);
  const specs = files
    .flatMap((file) => {
      const snapshot = workspace.snapshot(file);
      return snapshot ? [{ path: relativeTo(folder, file), snapshot }] : [];
    })
    .sort((a, b) => (a.path < b.path ? -1 : 1));
  if (specs.length === 0) return null;
  return {
    files: specs.length,
    markdown: orderMarkdown(orderList(specs, { variant: null, sets: 1 })),
  };
}

/** The innermost folder that all files lie in. */
function folderAround(files: readonly string[]): string {
  let folder = folderOf(files[0] ?? '');
  while (folder !== '' && !files.every((file) => isInside(folder, file))) folder = folderOf(folder);
  return folder;
}
