import { spawnSync } from "node:child_process";
import * as fs from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { decodePlan, findTooLarge } from "../../src/surfaces/files/decode.ts";
import { largestPlan, readBytes } from "../../src/surfaces/files/read.ts";
import type { FileSystem } from "../../src/surfaces/files/system.ts";
import { makeFolder } from "./stand-in.ts";

/** The facts of a file, save that it says it has no size. */
function hideSize(_: unknown, __: unknown, [handle]: [number]): fs.BigIntStats {
	return Object.assign(fs.fstatSync(handle, { bigint: true }), { size: 0n });
}

describe("reading", () => {
	test("gives all bytes of a file, an empty one included", () => {
		const folder = makeFolder();
		for (const bytes of [[], [1], [0xff, 0, 10]]) {
			fs.writeFileSync(join(folder, "p"), Buffer.from(bytes));
			const reading = readBytes(fs, join(folder, "p"), largestPlan);
			expect(reading.kind === "bytes" && [...reading.bytes]).toEqual(bytes);
		}
	});

	test("stops at the limit and takes a file that is just as large", () => {
		const folder = makeFolder();
		fs.writeFileSync(join(folder, "p"), Buffer.alloc(100));
		expect(readBytes(fs, join(folder, "p"), 100).kind).toBe("bytes");
		expect(readBytes(fs, join(folder, "p"), 99)).toMatchObject({ kind: "too-large", size: 100 });
	});

	test("goes on to the end of a file that states no size", () => {
		const folder = makeFolder();
		fs.writeFileSync(join(folder, "p"), "x".repeat(5000));
		const growing: FileSystem = { ...fs, fstatSync: new Proxy<typeof fs.fstatSync>(fs.fstatSync, { apply: hideSize }) };
		const reading = readBytes(growing, join(folder, "p"), largestPlan);
		expect(reading.kind === "bytes" && reading.bytes.length).toBe(5000);
		expect(readBytes(growing, join(folder, "p"), 4999).kind).toBe("too-large");
	});

	test("refuses a folder, a pipe that nobody writes to, a device and a file that is not there", () => {
		const folder = makeFolder();
		spawnSync("mkfifo", [join(folder, "pipe")]);
		expect(readBytes(fs, folder, 10)).toMatchObject({ kind: "unreadable", why: "it is a folder" });
		expect(readBytes(fs, join(folder, "pipe"), 10)).toMatchObject({ why: "it is not a regular file" });
		expect(readBytes(fs, "/dev/zero", 10)).toMatchObject({ why: "it is not a regular file" });
		expect(readBytes(fs, join(folder, "none"), 10)).toMatchObject({ why: "there is no such file" });
	});

	test("tells of a disk that fails on the way", () => {
		const folder = makeFolder();
		fs.writeFileSync(join(folder, "p"), "text");
		const failing: FileSystem = {
			...fs,
			readSync: () => {
				throw Object.assign(new Error("EIO"), { code: "EIO" });
			},
		};
		expect(readBytes(failing, join(folder, "p"), 10)).toMatchObject({ why: "the disk reports a fault" });
	});
});

describe("decoding", () => {
	const decode = (...bytes: number[]) => decodePlan(new Uint8Array(bytes), "p.ferrule");

	test("takes UTF-8 with or without a byte order mark", () => {
		expect(decode(0xef, 0xbb, 0xbf, 0x61)).toEqual({ text: "a", findings: [] });
		expect(decodePlan(new TextEncoder().encode("é\n€\n𝄞"), "p")).toEqual({ text: "é\n€\n𝄞", findings: [] });
	});

	test("takes a replacement character that was written as such", () => {
		expect(decode(0xef, 0xbf, 0xbd)).toEqual({ text: "\uFFFD", findings: [] });
	});

	test("tells the place of the first byte that is none, and the other lines", () => {
		const { text, findings } = decode(0x61, 10, 0x62, 0xff, 0x63, 10, 0xc3, 10);
		expect(text).toBe("a\nb\uFFFDc\n\uFFFD\n");
		expect(findings).toHaveLength(1);
		expect(findings[0]).toMatchObject({
			code: "text-not-utf8",
			level: "error",
			span: { file: "p.ferrule", line: 2, column: 2, endColumn: 3 },
			also: [{ span: { line: 3, column: 1 } }],
		});
	});

	test("tells so of a text in UTF-16", () => {
		const { text, findings } = decode(0xff, 0xfe, 0x70, 0, 0x6c, 0);
		expect(text).toBeUndefined();
		expect(findings).toMatchObject([{ code: "text-unreadable", span: { line: 1, column: 1 } }]);
		expect(findings[0]?.title).toContain("UTF-16");
	});

	test("stops at a zero, and where control characters abound, with one finding at the first", () => {
		for (const bytes of [
			[0x61, 10, 0x62, 0, 0xff, 10, 0xff],
			[0x61, 10, 0x62, 1, 2, 0xff],
		]) {
			const { text, findings } = decode(...bytes);
			expect(text).toBeUndefined();
			expect(findings).toMatchObject([{ code: "text-unreadable", level: "error", span: { line: 2, column: 2 } }]);
		}
		expect(decode(...new TextEncoder().encode(`\t\r\n\f${"x".repeat(20)}\u0001`)).text).toContain("\u0001");
	});
});

test("a plan above the limit is a finding with both figures", () => {
	expect(findTooLarge(3_000_000, "p").figures[0]).toMatchObject({ found: 3_000_000, limit: 2_000_000, unit: "bytes" });
});
