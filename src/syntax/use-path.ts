// The name of a file behind `use`, taken apart without looking at any disk: only names below the folder are let through.

/** The folders and the file that a name leads to below its root, or why it is not let through. */
export type UsePath = { readonly steps: readonly string[] } | { readonly why: string; readonly help: string };

/** The extension of a used file: that of every plan. */
export const usedExtension = ".ferrule";

/** Where `path` leads from a file in `folder`; both are steps below the root that nothing leads out of. */
export function resolveUse(path: string, folder: readonly string[]): UsePath {
	const refusal = refusals.find(({ is }) => is(path));
	if (refusal !== undefined) return { why: refusal.why, help: refusal.help };
	const steps = [...folder];
	for (const step of path.split("/")) {
		if (step === "" || step === ".") continue;
		if (step !== "..") steps.push(step);
		else if (steps.pop() === undefined) return outside;
	}
	return { steps };
}

const outside = {
	why: "it leads out of the plan's folder",
	help: "Put the file below the folder of the plan, or into the folder that `--library` names.",
};
const notPlain = "Write the plain name of a file beside the plan, with `/` between folders: `parts/relays.ferrule`.";

/** What a name may not be on any system, whatever lies there. */
const refusals: readonly { readonly is: (path: string) => boolean; readonly why: string; readonly help: string }[] = [
	{ is: (path) => path.trim() === "", why: "it names no file", help: notPlain },
	{ is: (path) => /\p{C}/u.test(path), why: "there are characters in it that cannot be seen", help: notPlain },
	{ is: (path) => path.includes("\\"), why: "there is a `\\` in it", help: notPlain },
	{ is: (path) => path.startsWith("/"), why: "it begins at the root of the disk", help: outside.help },
	{ is: (path) => path.includes(":"), why: "there is a colon in it, as in a drive or a web address", help: notPlain },
	{
		// Names that some systems take for a device, whatever stands behind their dot.
		is: (path) => path.split("/").some((step) => /^(?:con|prn|aux|nul|com[0-9]|lpt[0-9])(?:\.|$)/i.test(step)),
		why: "it is the name of a device",
		help: notPlain,
	},
	{
		is: (path) => /(?:^|\/)[^/]*[. ](?:\/|$)/.test(path.replace(/(?:^|\/)\.{1,2}(?=\/|$)/g, "")),
		why: "a name in it ends in a dot or a blank",
		help: notPlain,
	},
	{
		is: (path) => !path.endsWith(usedExtension),
		why: `its name does not end in ${usedExtension}`,
		help: `Only plans are read: give the file a name that ends in \`${usedExtension}\`.`,
	},
];
