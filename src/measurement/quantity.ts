declare const unit: unique symbol;

/** A number with a unit, branded where it crosses a file; the brand costs nothing at run time. */
export type Quantity<U extends string> = number & { readonly [unit]: U };

export type Grams = Quantity<'g'>;
export type GramsPerMole = Quantity<'g/mol'>;
export type GramsPerMillilitre = Quantity<'g/mL'>;
export type Millilitres = Quantity<'mL'>;
export type Moles = Quantity<'mol'>;
export type MolesPerLitre = Quantity<'mol/L'>;
/** As printed: 5.0 means 5.0 %. */
export type Percent = Quantity<'%'>;

export const grams = (value: number) => value as Grams;
export const gramsPerMole = (value: number) => value as GramsPerMole;
export const gramsPerMillilitre = (value: number) => value as GramsPerMillilitre;
export const millilitres = (value: number) => value as Millilitres;
export const moles = (value: number) => value as Moles;
export const molesPerLitre = (value: number) => value as MolesPerLitre;
export const percent = (value: number) => value as Percent;
