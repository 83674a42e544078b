import fc from 'fast-check';
import { cases, seed } from './depth.ts';

// A property that fails names its seed and its path; LABROW_SEED=… draws the same cases again.
fc.configureGlobal({ seed, numRuns: cases({ short: 100, deep: 1000 }) });
