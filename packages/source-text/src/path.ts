/** A place in a parsed value: property names and list indices from the top. */
export type Path = readonly (string | number)[];
