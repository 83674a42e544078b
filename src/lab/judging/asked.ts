/** How exact an entry is asked to be: so many significant figures, or so many decimals. */
export type Asked = { readonly figures: number } | { readonly decimals: number };
