import { runInNewContext } from 'node:vm';
import { describe, expect, it } from 'vitest';
import { bridgeValue } from '../../../src/preview/page/bridge/bridgeValue.ts';

describe('bridgeValue', () => {
  it('lets plain data through as a copy', () => {
    const value = { a: [1, 'two', true, null], b: { c: 0 } };
    const copy = bridgeValue(value);
    expect(copy).toEqual(value);
    expect(copy).not.toBe(value);
  });
  it('makes undefined null in a list and leaves it out of an object', () => {
    expect(bridgeValue([undefined])).toEqual([null]);
    expect(bridgeValue({ a: undefined })).toEqual({});
  });
  it('takes objects of another context', () => {
    expect(bridgeValue(runInNewContext('({a: [1]})'))).toEqual({ a: [1] });
  });
  const circle: Record<string, unknown> = {};
  circle.self = circle;
  it.each([
    { what: 'a Date', value: { when: [new Date(0)] }, place: 'the value.when[0]' },
    { what: 'a function', value: () => 1, place: 'the value' },
    { what: 'a Map', value: new Map(), place: 'the value' },
    { what: 'a bigint', value: 1n, place: 'the value' },
    { what: 'a Uint8Array', value: new Uint8Array(1), place: 'the value' },
    { what: 'an object that contains itself', value: circle, place: 'the value.self' },
    { what: 'a Thing', value: new (class Thing {})(), place: 'the value' },
  ])('refuses $what and says where it is', ({ what, value, place }) => {
    expect(() => bridgeValue(value)).toThrow(`received ${what} at ${place}.`);
  });
});
