export { documentsOf } from "./documentsOf.ts";
export { type FindHit, type FindIndex, findIndex } from "./findIndex.ts";
export { FIND_KINDS, type FindDocument, type FindKind } from "./foundDocument.ts";
