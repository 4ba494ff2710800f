// The room that writes. Loaded only when a drawing is written: `await import("./svg/index.ts")`.
export { checkSvg } from "./contract.ts";
export { writeSvg } from "./write-svg.ts";
