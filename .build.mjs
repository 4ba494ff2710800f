// Builds everything that runs: the command in one file with its drawing part beside it, the library with its types, `npm start`.
// `--if-stale` does nothing when what was built is newer than all it is built from; `--bench` adds the measurements.
import { spawnSync } from "node:child_process";
import { chmodSync, existsSync, readdirSync, readFileSync, rmSync, statSync, utimesSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "rolldown";

const root = dirname(fileURLToPath(import.meta.url));
const from = (path) => join(root, path);
const words = new Set(process.argv.slice(2));

/** What the outputs are made of; `.build.mjs` too, because it decides how. */
const origins = [
	"src",
	"seeds",
	"package.json",
	"package-lock.json",
	"tsconfig.json",
	"tsconfig.build.json",
	".build.mjs",
];
const last = from("dist/types/library.d.ts");

if (words.has("--bench")) await bundle("tests/bench/bench.ts", "bench", "node");
else if (!words.has("--if-stale") || isStale()) await buildAll();

async function buildAll() {
	rmSync(from("dist"), { recursive: true, force: true });
	await bundle("src/surfaces/ferrule.ts", "ferrule", "node");
	await bundle("src/surfaces/start.ts", "start", "node");
	await bundle("src/library.ts", "library", "browser");
	chmodSync(from("dist/ferrule.js"), 0o755);
	const types = spawnSync(
		process.execPath,
		[from("node_modules/typescript/bin/tsc"), "-p", from("tsconfig.build.json")],
		{
			stdio: "inherit",
		},
	);
	if (types.status !== 0) throw new Error("the types of the library could not be written");
	utimesSync(last, new Date(), new Date());
}

/** One entry as one file; what it imports only when needed goes to files of their own beside it. */
async function bundle(entry, name, platform) {
	await build({
		cwd: root,
		input: { [name]: from(entry) },
		platform,
		logLevel: "warn",
		transform: { target: platform === "node" ? "node20" : "es2023" },
		plugins: [rawText()],
		output: {
			dir: from("dist"),
			format: "esm",
			minify: true,
			legalComments: "none",
			entryFileNames: "[name].js",
			chunkFileNames: `parts/${name}-[name].js`,
		},
	});
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

function isStale() {
	if (!existsSync(last)) return true;
	const built = statSync(last).mtimeMs;
	return origins.some((origin) => newest(from(origin)) > built);
}

/** The time of the newest file or folder at or under a path. A folder's own time tells of files that went away. */
function newest(path) {
	if (!existsSync(path)) return 0;
	const facts = statSync(path);
	if (!facts.isDirectory()) return facts.mtimeMs;
	return Math.max(facts.mtimeMs, ...readdirSync(path).map((name) => newest(join(path, name))));
}
