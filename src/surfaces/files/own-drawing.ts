// Tells a drawing of ours from any other file, by how it begins.

/** Whether these bytes begin like an SVG file that Ferrule wrote: its root bears the class of our sheets. */
export function isOwnDrawing(bytes: Uint8Array): boolean {
	const head = new TextDecoder().decode(bytes.subarray(0, longestHead));
	return /^<svg [^<>]*\bclass="(?:[a-z-]+ )*fe-sheet[ "]/.test(head);
}

const longestHead = 2000;
