// Names that a drawing may carry: ids made from any name so that no two names share one, and text kept to what XML can hold.

/** An id from names: always `[A-Za-z_][A-Za-z0-9_-]*`, and different for different names, whatever letters they hold. */
export function idFrom(...names: readonly string[]): string {
	const id = names.map(encode).join(separator);
	// An id may not begin with a digit or a hyphen; the escape of that letter is what no other name gives.
	return /^[0-9-]/.test(id) ? `${escapeLetter(id[0] ?? "")}${id.slice(1)}` : id;
}

/** Text as XML 1.0 can carry it: what it cannot becomes U+FFFD. */
export function xmlText(text: string): string {
	return isPlain(text) ? text : [...text].map((letter) => (isXmlLetter(letter) ? letter : "\ufffd")).join("");
}

/** Text for an attribute: as `xmlText`, with line ends and tabs as spaces. */
export function xmlAttribute(text: string): string {
	return xmlText(text).replace(/[\t\r\n]/g, " ");
}

/** A letter `s` is no hexadecimal digit, so a separator is never taken for an escape. */
const separator = "_s_";

/** Letters, digits and hyphens stay; any other code unit becomes its number between underscores. */
function encode(name: string): string {
	return name.replace(/[^A-Za-z0-9-]/g, escapeLetter);
}

function escapeLetter(letter: string): string {
	return `_${letter.charCodeAt(0).toString(16)}_`;
}

/** Quick yes for the usual text: printable letters of the first block. */
function isPlain(text: string): boolean {
	return /^[\x20-\x7e]*$/.test(text);
}

/** The character range of XML 1.0, section 2.2; a lone surrogate is outside it. */
function isXmlLetter(letter: string): boolean {
	const code = letter.codePointAt(0) ?? 0;
	return (
		code === 0x9 ||
		code === 0xa ||
		code === 0xd ||
		(code >= 0x20 && code <= 0xd7ff) ||
		(code >= 0xe000 && code <= 0xfffd) ||
		code >= 0x10000
	);
}
