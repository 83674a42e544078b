import { describe, expect, it } from 'vitest';
import { problemOfFailure } from '../../src/sidebar/callHost.ts';

describe('problemOfFailure', () => {
  it.each([
    [
      'We’re sorry, a server error occurred while reading from storage. Error code PERMISSION_DENIED.',
      'several accounts',
    ],
    ['Too many simultaneous invocations: Spreadsheets', 'busy'],
    ['Exceeded maximum execution time', 'too long'],
    ['TypeError: Cannot read properties of undefined (reading “x”)', 'could not do that'],
  ])('says what to do about “%s”', (words, part) => {
    const { message } = problemOfFailure(new Error(words));
    expect(message).toContain(part);
    expect(message).not.toContain('TypeError');
  });
});
