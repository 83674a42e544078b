// Generated from tests/published/glassware-tolerances.csv by `npm run build`; edit that file instead.

/** Size in mL : ± mL, then m where the figure is from memory, c where it is common practice without a source. */
export const glassware: Readonly<Record<string, string>> = {
  'ASTM burette A': '10:0.02:m 25:0.03:m 50:0.05:m 100:0.1:m',
  'ASTM burette B': '10:0.04:m 25:0.06:m 50:0.1:m 100:0.2:m',
  'ASTM graduated cylinder A': '5:0.05 10:0.1 25:0.17 50:0.25 100:0.5 250:1 500:2 1000:3:m 2000:6:m',
  'ASTM graduated cylinder B': '5:0.1 10:0.2 25:0.34 50:0.5 100:1 250:2 500:4 1000:6:m 2000:12:m',
  'ASTM graduated pipette A': '1:0.01:m 2:0.01 5:0.02 10:0.03 25:0.05:m',
  'ASTM graduated pipette B': '1:0.02:m 2:0.02:m 5:0.04:m 10:0.06:m 25:0.1:m',
  'ASTM volumetric flask A': '5:0.02:m 10:0.02:m 25:0.03 50:0.05 100:0.08 200:0.1:m 250:0.12 500:0.2:m 1000:0.3 2000:0.5',
  'ASTM volumetric flask B': '5:0.04:m 10:0.04:m 25:0.06 50:0.1 100:0.16 200:0.2:m 250:0.24 500:0.4:m 1000:0.6 2000:1',
  'ASTM volumetric pipette A': '0.5:0.006 1:0.006 2:0.006 3:0.01 4:0.01 5:0.01 6:0.01 7:0.01 10:0.02 15:0.03:m 20:0.03:m 25:0.03 50:0.05 100:0.08',
  'ASTM volumetric pipette B': '0.5:0.012 1:0.012 2:0.012 3:0.02 4:0.02 5:0.02 6:0.03 7:0.03 10:0.04 15:0.06:m 20:0.06:m 25:0.06 50:0.1 100:0.16',
  'ISO burette A': '1:0.006 2:0.01 5:0.01 10:0.03 25:0.05 50:0.05 100:0.1',
  'ISO burette B': '1:0.01 2:0.02 5:0.02 10:0.05 25:0.1 50:0.1 100:0.2',
  'ISO graduated cylinder A': '5:0.05:m 10:0.1:m 25:0.25:m 50:0.5:m 100:0.5:m 250:1:m 500:2.5:m 1000:5:m 2000:10:m',
  'ISO graduated cylinder B': '5:0.1:m 10:0.2:m 25:0.5:m 50:1:m 100:1:m 250:2:m 500:5:m 1000:10:m 2000:20:m',
  'ISO graduated pipette A': '1:0.007:m 2:0.01:m 5:0.03:m 10:0.05:m 25:0.1:m',
  'ISO graduated pipette B': '1:0.01:m 2:0.02:m 5:0.05:m 10:0.1:m 25:0.2:m',
  'ISO volumetric flask A': '1:0.025 2:0.025 5:0.025 10:0.025 20:0.04 25:0.04 50:0.06 100:0.1 200:0.15 250:0.15 500:0.25 1000:0.4 2000:0.6 5000:1.2',
  'ISO volumetric flask B': '1:0.05 2:0.05 5:0.05 10:0.05 20:0.08 25:0.08 50:0.12 100:0.2 200:0.3 250:0.3 500:0.5 1000:0.8 2000:1.2 5000:2.4',
  'ISO volumetric pipette A': '0.5:0.005 1:0.008 2:0.01 5:0.015 10:0.02 20:0.03 25:0.03 50:0.05 100:0.08',
  'ISO volumetric pipette B': '0.5:0.01 1:0.015 2:0.02 5:0.03 10:0.04 20:0.06 25:0.06 50:0.1 100:0.15',
  'beaker': '50:2.5:c 100:5:c 250:12.5:c 500:25:c 1000:50:c',
};
