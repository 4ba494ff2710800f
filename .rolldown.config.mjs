// How each thing that runs is bundled: its entry, its platform, and what of the libraries is left out.
import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { plainSteps } from "./.plain-steps.mjs";

const root = dirname(fileURLToPath(import.meta.url));

/** The entries by the names of the files they become. */
const entries = {
	launch: { file: "src/surfaces/launch.ts", output: commonModule("ferrule.cjs") },
	ferrule: {
		file: "src/surfaces/ferrule.ts",
		output: commonModule("parts/ferrule.cjs"),
		apart: ["handbook", "figures"],
	},
	handbook: { file: "src/handbook/index.ts", output: commonModule("parts/handbook.cjs") },
	figures: { file: "src/figures/index.ts", output: commonModule("parts/figures.cjs") },
	start: { file: "src/surfaces/start.ts", output: commonModule("start.cjs") },
	library: { file: "src/library.ts", output: module("library.js"), platform: "browser" },
	// All in one: its parts would have the names of the library's.
	bench: { file: "tests/bench/bench.ts", output: { ...module("bench.js"), codeSplitting: false } },
	proof: { file: "tests/mistakes/proof.ts", output: { ...module("proof.js"), codeSplitting: false } },
};

/** Options for one entry as one file in `folder`; what it imports only when needed goes into files of their own under `parts`. */
export function optionsFor(name, folder) {
	const { file, output, platform = "node", apart = [] } = entries[name];
	return {
		cwd: root,
		input: { [name]: join(root, file) },
		platform,
		logLevel: "warn",
		// The measurements call at once what the command loads only when it draws.
		checks: { ineffectiveDynamicImport: false, pluginTimings: false },
		transform: { target: platform === "node" ? "node20" : "es2023" },
		plugins: [
			ourSteps(),
			rawText(),
			keepApart(apart),
			leaveOut(),
			reckonLate(),
			recordAside(),
			takeOver(),
			asciiOnly(),
		],
		output: { dir: folder, minify: true, comments: { legal: false }, ...output },
	};
}

function module(file) {
	return { format: "esm", entryFileNames: file, chunkFileNames: "parts/[name].js" };
}

/** Starts a little faster than a module of the new kind. */
function commonModule(file) {
	return { format: "cjs", entryFileNames: file, chunkFileNames: "parts/[name].cjs", dynamicImportInCjs: false };
}

/**
 * What a check never needs, but would share modules with it: such an entry is a bundle of its own, with its own copy of these.
 * Else the shared ones would become files that every check has to load, and tables that it has to fill.
 */
function keepApart(names) {
	const files = new Map(names.map((name) => [join(root, entries[name].file), `./${name}.cjs`]));
	return {
		name: "keep-apart",
		resolveId(source, importer, { kind }) {
			const part = kind === "dynamic-import" ? files.get(join(dirname(importer), source)) : undefined;
			return part === undefined ? null : { id: part, external: "relative" };
		},
	};
}

const rewrite = plainSteps(root);

/** Our own files with plain steps in place of iterators. */
function ourSteps() {
	return {
		name: "our-steps",
		transform(_, id) {
			return id.startsWith(root) && id.endsWith(".ts") && !id.includes("node_modules") ? rewrite(id) : null;
		},
	};
}

/** `import text from "x.ferrule?raw"` gives the file as text. */
function rawText() {
	return {
		name: "raw-text",
		load(id) {
			if (!id.endsWith("?raw")) return null;
			return `export default ${JSON.stringify(readFileSync(id.slice(0, -"?raw".length), "utf8"))};`;
		},
	};
}

/** Every character beyond ASCII as its escape: such a file is read and held at half the cost, and hides no marks that turn text round. */
function asciiOnly() {
	const escaped = (unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, "0")}`;
	return {
		name: "ascii-only",
		generateBundle(_, bundle) {
			for (const chunk of Object.values(bundle))
				if (chunk.type === "chunk") chunk.code = chunk.code.replace(/[\u0080-\uffff]/g, escaped);
		},
	};
}

/** The lexer keeps a table of what it can as well reckon for each letter; filling it took a fiftieth of a check. */
function reckonLate() {
	const table = "charCodeToOptimizedIdxMap = new Array(65536);";
	const filling = /for \(let i = 0; i < 65536; i\+\+\) \{[^}]*\}/;
	const asking = ": charCodeToOptimizedIdxMap[charCode];";
	return {
		name: "reckon-late",
		transform(code, id) {
			if (!/[\\/]chevrotain[\\/]lib[\\/]src[\\/]scan[\\/]lexer\.js$/.test(id)) return null;
			if (!code.includes(table) || !filling.test(code) || !code.includes(asking))
				throw new Error("the lexer of chevrotain has changed; look at what `reckonLate` leaves out of it");
			return code
				.replace(table, "charCodeToOptimizedIdxMap = [0];")
				.replace(filling, "")
				.replace(asking, ": 255 + Math.trunc(charCode / 255);");
		},
	};
}

/**
 * To learn its grammar, the parser puts a hundred methods on itself and takes them off again one by one; that took a fiftieth of a
 * check. They are put on a prototype in between, which is taken out as a whole.
 */
function recordAside() {
	const putting = /(?<=\n *)this(?=(?:\[`\w+(?:\$\{idx\})?`\]|\.(?:ACTION|BACKTRACK|LA)) = )/g;
	const beginning = 'this.TRACE_INIT("Enable Recording", () => {';
	const taking = /const that = this;\n[\s\S]*?delete that\.LA;/;
	return {
		name: "record-aside",
		transform(code, id) {
			if (!/[\\/]chevrotain[\\/]lib[\\/]src[\\/]parse[\\/]parser[\\/]traits[\\/]gast_recorder\.js$/.test(id))
				return null;
			if (code.match(putting)?.length !== 17 || !code.includes(beginning) || !taking.test(code))
				throw new Error("the recorder of chevrotain has changed; look at what `recordAside` does to it");
			return code
				.replace(putting, "aside")
				.replace(
					beginning,
					`${beginning} const aside = Object.create(Object.getPrototypeOf(this)); Object.setPrototypeOf(this, aside);`,
				)
				.replace(taking, "Object.setPrototypeOf(this, Object.getPrototypeOf(Object.getPrototypeOf(this)));");
		},
	};
}

/** Each piece of the grammar takes over what it is made with by ways that look at it five times; a hundredth of a check went into that. */
function takeOver() {
	const taking = /assign\(this, pickBy\(options, \(v\) => v !== undefined\)\);/g;
	const plainly = "for (const name in options) if (options[name] !== undefined) this[name] = options[name];";
	return {
		name: "take-over",
		transform(code, id) {
			if (!/[\\/]@chevrotain[\\/]gast[\\/]lib[\\/]src[\\/]model\.js$/.test(id)) return null;
			if (code.match(taking)?.length !== 10)
				throw new Error("the grammar of chevrotain has changed; look at what `takeOver` does to it");
			return code.replace(taking, plainly);
		},
	};
}

/**
 * The document that drawings are written into can also measure fonts, read images, parse HTML and answer style queries.
 * Drawings ask for none of it, and it made two thirds of the loading time. What is called after all says so.
 * What lodash-es would have from Node, where it finds Node, it does itself as well; so the library asks for nothing of Node.
 */
function leaveOut() {
	return {
		name: "leave-out",
		load(id) {
			const file = /[\\/]node_modules[\\/](.*)$/.exec(id)?.[1]?.replaceAll("\\", "/");
			return unused.get(file) ?? null;
		},
	};
}

const fail = (what) => `{ throw new Error("${what} is not part of this build"); }`;
/** Files of libraries and what stands in for each. */
const unused = new Map([
	["lodash-es/_nodeUtil.js", "export default undefined;"],
	["svgdom/src/config.js", "export const config = {};"],
	["svgdom/src/utils/defaults.js", 'export const fontSize = 16, fontFamily = "sans-serif";'],
	["svgdom/src/utils/bboxUtils.js", `export function getSegments() ${fail("Measuring")}`],
	["svgdom/src/dom/html/HTMLParser.js", `export function HTMLParser() ${fail("Parsing")}`],
	["svgdom/src/other/CssQuery.js", `export class CssQuery { constructor() ${fail("Querying by style")} }`],
	[
		"svgdom/src/dom/html/HTMLImageElement.js",
		'import { HTMLElement } from "./HTMLElement.js"; export class HTMLImageElement extends HTMLElement {}',
	],
]);
