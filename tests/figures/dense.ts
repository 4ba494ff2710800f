// Linear equations by Gaussian elimination with partial pivoting on a full matrix: slow, plain, and shares nothing with the solver under test.

/** The unknowns of `matrix` x = `right`; throws where there is no single answer. */
export function solveDense(matrix: readonly (readonly number[])[], right: readonly number[]): number[] {
	const rows = matrix.map((row, at) => [...row, right[at] ?? 0]);
	const count = rows.length;
	for (let column = 0; column < count; column++) {
		let best = column;
		for (let row = column; row < count; row++)
			if (Math.abs(rows[row]?.[column] ?? 0) > Math.abs(rows[best]?.[column] ?? 0)) best = row;
		const [chosen, here] = [rows[best], rows[column]];
		if (chosen === undefined || here === undefined || chosen[column] === 0)
			throw new Error("the equations are singular");
		rows[best] = here;
		rows[column] = chosen;
		for (let row = column + 1; row < count; row++) {
			const line = rows[row];
			if (line === undefined) continue;
			const factor = (line[column] ?? 0) / (chosen[column] ?? 1);
			if (factor === 0) continue;
			for (let at = column; at <= count; at++) line[at] = (line[at] ?? 0) - factor * (chosen[at] ?? 0);
		}
	}
	const solved = new Array<number>(count).fill(0);
	for (let row = count - 1; row >= 0; row--) {
		const line = rows[row] ?? [];
		let value = line[count] ?? 0;
		for (let column = row + 1; column < count; column++) value -= (line[column] ?? 0) * (solved[column] ?? 0);
		solved[row] = value / (line[row] ?? 1);
	}
	return solved;
}
