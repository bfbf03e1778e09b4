import { describe } from 'vitest';
import { testConversation } from './conversation.ts';
import { browserLine } from './lines.ts';

describe('the server in a worker of a browser', () => {
  testConversation(browserLine);
});
