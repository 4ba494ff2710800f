import * as fs from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { type Permission, replaceFile } from "../../src/surfaces/files/replace.ts";
import type { FileSystem } from "../../src/surfaces/files/system.ts";
import { makeFolder, testWriter } from "./stand-in.ts";

const any: Permission = { inputs: [], replace: "any" };
const broken = (code: string) => () => {
	throw Object.assign(new Error(code), { code });
};

test("a new file is written whole, with the usual permissions and nothing beside it", () => {
	const folder = makeFolder();
	expect(replaceFile(fs, testWriter, join(folder, "a.svg"), "drawing", any)).toBeUndefined();
	expect(fs.readFileSync(join(folder, "a.svg"), "utf8")).toBe("drawing");
	expect(fs.statSync(join(folder, "a.svg")).mode & 0o777).toBe(0o666 & ~process.umask());
	expect(fs.readdirSync(folder)).toEqual(["a.svg"]);
});

test("a file that is replaced keeps its permissions", () => {
	const folder = makeFolder();
	const path = join(folder, "a.svg");
	fs.writeFileSync(path, "old");
	fs.chmodSync(path, 0o640);
	expect(replaceFile(fs, testWriter, path, "new", any)).toBeUndefined();
	expect(fs.readFileSync(path, "utf8")).toBe("new");
	expect(fs.statSync(path).mode & 0o7777).toBe(0o640);
});

test("a symbolic link stays a link, and the file it leads to is replaced", () => {
	const folder = makeFolder();
	fs.mkdirSync(join(folder, "far"));
	fs.writeFileSync(join(folder, "far", "real.svg"), "old");
	fs.symlinkSync(join("far", "real.svg"), join(folder, "link.svg"));
	expect(replaceFile(fs, testWriter, join(folder, "link.svg"), "new", any)).toBeUndefined();
	expect(fs.lstatSync(join(folder, "link.svg")).isSymbolicLink()).toBe(true);
	expect(fs.readFileSync(join(folder, "far", "real.svg"), "utf8")).toBe("new");
});

describe("what is refused with status 73 and stays as it was", () => {
	test("a folder", () => {
		const folder = makeFolder();
		expect(replaceFile(fs, testWriter, folder, "new", any)).toMatchObject({ status: 73, why: "it is a folder" });
	});

	test("a link that leads nowhere", () => {
		const folder = makeFolder();
		fs.symlinkSync("gone", join(folder, "link.svg"));
		expect(replaceFile(fs, testWriter, join(folder, "link.svg"), "new", any)).toMatchObject({ status: 73 });
		expect(fs.readdirSync(folder)).toEqual(["link.svg"]);
	});

	test("a device", () => {
		expect(replaceFile(fs, testWriter, "/dev/null", "new", any)).toMatchObject({
			status: 73,
			why: "it is not a regular file",
		});
	});

	test("a file with a second name", () => {
		const folder = makeFolder();
		fs.writeFileSync(join(folder, "a.svg"), "old");
		fs.linkSync(join(folder, "a.svg"), join(folder, "b.svg"));
		expect(replaceFile(fs, testWriter, join(folder, "a.svg"), "new", any)).toMatchObject({ status: 73 });
		expect(fs.readFileSync(join(folder, "b.svg"), "utf8")).toBe("old");
	});

	test("a plan that was read, by whatever name, even when all may be replaced", () => {
		const folder = makeFolder();
		const path = join(folder, "van.ferrule");
		fs.writeFileSync(path, "plan");
		fs.symlinkSync("van.ferrule", join(folder, "van.svg"));
		const { dev, ino } = fs.statSync(path, { bigint: true });
		const permission: Permission = { inputs: [{ device: dev, inode: ino }], replace: "any" };
		expect(replaceFile(fs, testWriter, join(folder, "van.svg"), "new", permission)).toMatchObject({ status: 73 });
		expect(fs.readFileSync(path, "utf8")).toBe("plan");
	});

	test("a file that is not one of ours, or any file where none may be replaced", () => {
		const folder = makeFolder();
		const path = join(folder, "a.svg");
		fs.writeFileSync(path, "somebody's");
		const ours: Permission = { inputs: [], replace: (bytes) => bytes[0] === "<".charCodeAt(0) };
		expect(replaceFile(fs, testWriter, path, "new", ours)?.why).toContain("--force");
		expect(replaceFile(fs, testWriter, path, "new", { inputs: [], replace: "never" })).toMatchObject({ status: 73 });
		expect(fs.readFileSync(path, "utf8")).toBe("somebody's");
		fs.writeFileSync(path, "<ours");
		expect(replaceFile(fs, testWriter, path, "new", ours)).toBeUndefined();
	});

	test("a place in a folder that does not exist, or below a file", () => {
		const folder = makeFolder();
		fs.writeFileSync(join(folder, "file"), "");
		expect(replaceFile(fs, testWriter, join(folder, "no", "a.svg"), "new", any)).toMatchObject({ status: 73 });
		expect(replaceFile(fs, testWriter, join(folder, "file", "a.svg"), "new", any)).toMatchObject({ status: 73 });
	});

	test("a file or folder without permission", () => {
		const folder = makeFolder();
		fs.writeFileSync(join(folder, "a.svg"), "old");
		const noAccess: FileSystem = { ...fs, accessSync: broken("EACCES") };
		expect(replaceFile(noAccess, testWriter, join(folder, "a.svg"), "new", any)).toMatchObject({ status: 73 });
		const noFolder: FileSystem = { ...fs, openSync: broken("EROFS") };
		expect(replaceFile(noFolder, testWriter, join(folder, "b.svg"), "new", any)).toMatchObject({ status: 73 });
		expect(fs.readdirSync(folder)).toEqual(["a.svg"]);
	});
});

describe("when writing breaks off, status 74, the old file and nothing beside it", () => {
	const faults: [string, FileSystem][] = [
		["the disk is full at once", { ...fs, writeSync: broken("ENOSPC") }],
		["the disk is full when it is synced", { ...fs, fsyncSync: broken("EIO") }],
		["the disk takes nothing more without a word", { ...fs, writeSync: () => 0 }],
		["fewer bytes are there than were written", { ...fs, writeSync: claimAll }],
		["the permissions cannot be copied", { ...fs, fchmodSync: broken("EPERM") }],
		["it cannot take the place of the old one", { ...fs, renameSync: broken("EXDEV") }],
		["the handle cannot be closed", { ...fs, closeSync: closeAndFail }],
	];
	test.each(faults)("%s", (_, files) => {
		const folder = makeFolder();
		const path = join(folder, "a.svg");
		fs.writeFileSync(path, "old");
		expect(replaceFile(files, testWriter, path, "new content", any)).toMatchObject({ status: 74 });
		expect(fs.readFileSync(path, "utf8")).toBe("old");
		expect(fs.readdirSync(folder)).toEqual(["a.svg"]);
	});

	test("something else changes the file meanwhile", () => {
		const folder = makeFolder();
		const path = join(folder, "a.svg");
		fs.writeFileSync(path, "old");
		const meddling: FileSystem = {
			...fs,
			fsyncSync: (handle) => {
				fs.writeFileSync(path, "somebody was here");
				fs.fsyncSync(handle);
			},
		};
		expect(replaceFile(meddling, testWriter, path, "new", any)).toMatchObject({ status: 74 });
		expect(fs.readFileSync(path, "utf8")).toBe("somebody was here");
	});

	function claimAll(_: number, buffer: unknown): number {
		return buffer instanceof Uint8Array ? buffer.length : 0;
	}
	function closeAndFail(handle: number): void {
		fs.closeSync(handle);
		throw Object.assign(new Error("EIO"), { code: "EIO" });
	}
});

test("a disk that takes a few bytes at a time gets all of them", () => {
	const folder = makeFolder();
	const path = join(folder, "a.svg");
	const slow: FileSystem = {
		...fs,
		writeSync: (handle: number, buffer: NodeJS.ArrayBufferView | string, offset?: unknown, length?: unknown) =>
			typeof buffer !== "string" && typeof offset === "number" && typeof length === "number"
				? fs.writeSync(handle, buffer, offset, Math.min(3, length), null)
				: 0,
	};
	expect(replaceFile(slow, testWriter, path, "a drawing in small pieces", any)).toBeUndefined();
	expect(fs.readFileSync(path, "utf8")).toBe("a drawing in small pieces");
});

test("what a killed run left is swept; what a running one writes, and other files, stay", () => {
	const folder = makeFolder();
	const names = [
		".a.svg.999999999.x1.part",
		`.a.svg.${process.pid}.x2.part`,
		".b.svg.999999999.x3.part",
		".a.svg.part",
	];
	for (const name of names) fs.writeFileSync(join(folder, name), "");
	expect(replaceFile(fs, testWriter, join(folder, "a.svg"), "new", any)).toBeUndefined();
	expect(fs.readdirSync(folder).sort()).toEqual([...names.slice(1), "a.svg"].sort());
});
