import { bundle } from "../../scripts/bundle.js";

await bundle(import.meta.dirname);
