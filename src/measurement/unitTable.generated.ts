// Generated from the unit definitions of mathjs by `npm run build`; edit scripts/generate/units.ts instead.

/** By kind: each unit with its factor to the default unit of the kind, as decimal text, and its plain spelling. */
export const unitTable = {
  volume: 'L|1e3 dL|1e2 cL|1e1 mL|1e0 µL|1e-3|μL dm³|1e3|dm3 cm³|1e0|cm3 m³|1e6|m3',
  mass: 'kg|1e3 g|1e0 mg|1e-3 µg|1e-6|μg ng|1e-9',
  amount: 'kmol|1e3 mol|1e0 mmol|1e-3 µmol|1e-6|μmol',
  concentration: 'mol/L|1e0 mmol/L|1e-3 mol/dm³|1e0|mol/dm3 M|1e0 mM|1e-3 µM|1e-6|μM µmol/L|1e-6|μmol/L',
  density: 'g/mL|1e0 g/cm³|1e0|g/cm3 kg/m³|1e-3|kg/m3',
} as const;
