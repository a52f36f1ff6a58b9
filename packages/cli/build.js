// One small entry and a chunk per subcommand, so that each starts without the others.
import { bundle } from "../../scripts/bundle.js";

await bundle(import.meta.dirname, { splitting: true });
