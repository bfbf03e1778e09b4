import type { CancellationToken } from 'vscode-languageserver';
import { newHub } from '../features/new-hub.ts';
import {
  type BuildsAnswer,
  buildsRequest,
  checkWorkspaceRequest,
  type ExplainAnswer,
  explainRequest,
  type MeasureAnswer,
  measureRequest,
  type OrderAnswer,
  orderRequest,
  type SectionAnswer,
  type SheetAnswer,
  type SkeletonAnswer,
  sectionRequest,
  sheetRequest,
  skeletonRequest,
} from '../protocol/requests.ts';
import { explanation } from '../report/explain.ts';
import { measuredHub } from '../report/new-hub/measured-hub.ts';
import { checkWorkspace, emptyCheck } from './check-workspace.ts';
import { conditionsOf } from './conditions.ts';
import { drawnBuilds } from './drawn-builds.ts';
import { drawnSection } from './drawn-section.ts';
import { printedSheet } from './printed-sheet.ts';
import type { Session } from './session.ts';
import { isObject } from './settings.ts';
import { workspaceOrder } from './workspace-order.ts';

/** A dialogue of more answers than this has lost its way. */
const mostAnswers = 500;

/** Answers the requests of our own protocol. Their parameters are whatever a client sent. */
export function answerOwnRequests(session: Session): void {
  const { connection, guard } = session;
  const answer = <T>(
    method: string,
    empty: T,
    work: (params: Record<string, unknown>) => T | Promise<T>,
  ): void => {
    connection.onRequest(
      method,
      (params: unknown, token: CancellationToken): Promise<unknown> =>
        guard.request(token, empty, () => work(isObject(params) ? params : {})),
    );
  };
  answer<SectionAnswer | null>(sectionRequest, null, ({ uri, variant, width, conditions }) => {
    const snapshot = session.snapshot(uri);
    const room = typeof width === 'number' ? width : null;
    const name = typeof variant === 'string' ? variant : null;
    return snapshot && drawnSection(snapshot, name, room, conditionsOf(conditions));
  });
  answer<BuildsAnswer | null>(buildsRequest, null, ({ uri, variant, conditions }) => {
    const snapshot = session.snapshot(uri);
    const name = typeof variant === 'string' ? variant : null;
    return snapshot && drawnBuilds(snapshot, name, conditionsOf(conditions));
  });
  answer<SheetAnswer | null>(sheetRequest, null, ({ uri, variant }) => {
    const snapshot = session.snapshot(uri);
    return snapshot && printedSheet(snapshot, typeof variant === 'string' ? variant : null);
  });
  answer<ExplainAnswer | null>(explainRequest, null, ({ code }) => {
    const markdown = typeof code === 'string' ? explanation(code) : null;
    return markdown === null ? null : { markdown };
  });
  answer<MeasureAnswer | null>(measureRequest, null, ({ answers }) =>
    Array.isArray(answers) && answers.every((one) => typeof one === 'string') && answers.length < mostAnswers
      ? measuredHub(answers)
      : null,
  );
  answer<SkeletonAnswer | null>(skeletonRequest, null, ({ name, position }) =>
    newHub(typeof name === 'string' ? name : '', position === 'rear' ? 'rear' : 'front'),
  );
  answer<OrderAnswer | null>(orderRequest, null, () => workspaceOrder(session));
  answer(checkWorkspaceRequest, emptyCheck, () => checkWorkspace(session));
}
