// Replaces one file over and over until it is killed, beginning with the letter it is told: what the kill test shoots at.
import * as fs from "node:fs";
import { replaceFile } from "../../src/surfaces/files/replace.ts";

const [, , path = "", first = "0"] = process.argv;
const writer = {
	process: process.pid,
	salt: () => (Date.now() % 1e9).toString(36),
	isRunning: (number: number) => number === process.pid,
};
for (let turn = Number(first); ; turn++) {
	const letter = String.fromCharCode(97 + (turn % 26));
	replaceFile(fs, writer, path, letter.repeat(300_000), { inputs: [], replace: "any" });
}
