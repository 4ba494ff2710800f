// Replaces one file over and over until it is killed: the process that the kill test shoots at.
import * as fs from "node:fs";
import { replaceFile } from "../../src/surfaces/files/replace.ts";

const path = process.argv[2] ?? "";
const writer = {
	process: process.pid,
	salt: () => (Date.now() % 1e9).toString(36),
	isRunning: (number: number) => number === process.pid,
};
for (let turn = 0; ; turn++) {
	const letter = String.fromCharCode(97 + (turn % 26));
	replaceFile(fs, writer, path, letter.repeat(300_000), { inputs: [], replace: "any" });
}
