// What this room gives to others: texts of plans, laid out and written out.
export { pinTags } from "./pin-tags.ts";
export { tidyText } from "./tidy-text.ts";
export { writeOut } from "./write-out.ts";
