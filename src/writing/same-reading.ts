// Whether two statements say the same: they are alike but for places and for how figures are spelt.
import type { Statement } from "../syntax/tree.ts";

/** True where two statements say the same, word for word; false where one is missing. */
export function saySame(one: Statement | undefined, other: Statement | undefined): boolean {
	return one !== undefined && other !== undefined && tell(one) === tell(other);
}

function tell(statement: Statement): string {
	return JSON.stringify(statement, (key, value: unknown) => {
		if (key === "span") return undefined;
		return isFigure(value) ? { ...value, text: "" } : value;
	});
}

function isFigure(value: unknown): value is object {
	return typeof value === "object" && value !== null && "kind" in value && figures.has(value.kind);
}

const figures = new Set<unknown>(["quantity", "gauge"]);
