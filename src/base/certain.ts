// For what the code knows to be there and the compiler cannot see; a miss is our own fault, never the builder's.

/** The value, or a thrown internal fault that says what was missing. */
export function certain<Value>(value: Value | undefined | null, what: string): Value {
	if (value === undefined || value === null) throw new InternalFault(`${what} is missing`);
	return value;
}

/** A fault of Ferrule itself. Surfaces report it as such, with status 70. */
export class InternalFault extends Error {
	override name = "InternalFault";
}
