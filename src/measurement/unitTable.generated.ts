// Generated from the unit definitions of mathjs by `npm run build`; edit scripts/generate/units.ts instead.

/** By kind: each unit with its factor to the default unit of the kind, as decimal text. */
export const unitTable = {
  volume: 'L|1e3 dL|1e2 cL|1e1 mL|1e0 µL|1e-3 dm³|1e3 cm³|1e0 m³|1e6',
  mass: 'kg|1e3 g|1e0 mg|1e-3 µg|1e-6 ng|1e-9',
  amount: 'kmol|1e3 mol|1e0 mmol|1e-3 µmol|1e-6',
  concentration: 'mol/L|1e0 mmol/L|1e-3 mol/dm³|1e0 M|1e0 mM|1e-3 µM|1e-6 µmol/L|1e-6',
  density: 'g/mL|1e0 g/cm³|1e0 kg/m³|1e-3',
} as const;
