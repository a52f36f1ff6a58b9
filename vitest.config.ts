import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["packages/*/src/**/*.test.ts", "scripts/**/*.test.ts", "tests/**/*.test.ts"],
    watch: false,
    testTimeout: 20_000,
    hookTimeout: 60_000,
    unstubEnvs: true,
  },
});
