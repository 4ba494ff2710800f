// How much a circuit's conductors are asked to carry before anything opens, for the judge of the tests.
import { type Device, devicesOf, residual, settle } from "./devices.ts";
import { type Tell, touchLimit, touchVolts } from "./harms.ts";
import { amperesAllowed } from "./limits.ts";
import { solve } from "./nodal.ts";
import { amperesIn, type Branch, type Frame, type Wiring, wire } from "./wiring.ts";

/** Amperes that a device without any limit might be asked for. */
const noLimit = 1_000;

/** With as much plugged in as the devices let through, at each place and at any two together. */
export function underLoad(frame: Frame, quiet: Wiring, tell: Tell): void {
	const { circuit, nodes, volts, state, opened } = quiet;
	const unloaded = wire(frame, state, opened, [], "unloaded");
	// One ampere as a load draws it, with all sources as if they were wires.
	const bare = { ...unloaded, branches: unloaded.branches.map((branch): Branch => ({ ...branch, volts: 0 })) };
	const poles = devicesOf(bare).flatMap(({ limit = 0, poles: ways }) => ways.map((way) => ({ way, limit })));
	const conductors = bare.branches.flatMap((branch) => {
		const conductor = branch.conductor === undefined ? undefined : circuit.conductors[branch.conductor];
		const isLive = [branch.from, branch.to].every((node) => Math.abs(volts[node] ?? 0) > touchLimit);
		if (branch.cordGround !== undefined) return [{ branch, name: branch.cordGround, limit: "none" as const, isLive }];
		if (conductor === undefined) return [];
		const limit = conductor.role === "ground" ? ("none" as const) : amperesAllowed(circuit, conductor);
		return limit === undefined ? [] : [{ branch, name: conductor.name, limit, isLive }];
	});
	const pull = (from: number, to: number) => {
		const across = (volts[from] ?? 0) - (volts[to] ?? 0);
		if (Math.abs(across) < touchLimit) return [];
		const drawn = solve(
			bare.eliminated,
			new Map([
				[from, -Math.sign(across)],
				[to, Math.sign(across)],
			]),
		);
		const through = poles.map(({ way }) => amperesIn(way, drawn));
		// No more than the sources can drive through all that is in the way.
		const ohms = Math.abs((drawn[from] ?? 0) - (drawn[to] ?? 0));
		const most = Math.min(
			noLimit,
			Math.abs(across) / ohms,
			...poles.map(({ limit }, at) => limit / Math.max(Math.abs(through[at] ?? 0), 1e-9)),
		);
		const isResidual = circuit.groundFaults.some(({ part }) => Math.abs(residual(bare, part, drawn)) > 0.01);
		return [{ through, most, isResidual, amperes: conductors.map(({ branch }) => amperesIn(branch, drawn)) }];
	};
	const pulls = circuit.loads.flatMap(({ between: [one, other] }) => pull(nodes[one] ?? 0, nodes[other] ?? 0));
	for (const [index, one] of pulls.entries())
		for (const other of pulls.slice(index)) {
			const second = one === other ? 0 : other.most;
			const joint = (first: readonly number[], last: readonly number[], at: number): number =>
				Math.abs(one.most * (first[at] ?? 0) + second * (last[at] ?? 0));
			const scale = Math.min(
				1,
				...poles.map(({ limit }, at) => limit / Math.max(joint(one.through, other.through, at), 1e-9)),
			);
			for (const [at, { name, limit }] of conductors.entries()) {
				const figure = scale * joint(one.amperes, other.amperes, at);
				if (limit === "none") {
					if (one === other && Math.abs(one.amperes[at] ?? 0) > 0.01)
						tell({ sort: "ground current", at: name, state, figure });
				} else if (figure > limit * 1.01 && !one.isResidual && !other.isResidual)
					tell({ sort: "overload", at: name, state, figure });
			}
		}
	// A poor insulation anywhere draws what the device ahead lets through, before any load's own device.
	const { lives, backs } = insulations(quiet);
	for (const [enclosure, froms] of lives)
		for (const from of froms)
			for (const { amperes, most } of pull(from, backs.get(enclosure) ?? from))
				for (const [at, { name, limit, isLive }] of conductors.entries()) {
					const figure = Math.abs(most * (amperes[at] ?? 0));
					if (isLive && limit !== "none" && figure > limit * 1.01)
						tell({ sort: "overload", at: name, state, figure, fault: enclosure });
				}
	for (const { conductor, from, to } of deadEnds(quiet, backs))
		for (const { most } of pull(from, to)) {
			const limit = amperesAllowed(circuit, conductor);
			if (limit !== undefined && most > limit * 1.01)
				tell({ sort: "overload", at: conductor.name, state, figure: most, fault: "its end" });
		}
}

/** Ends of cables that lead no further: a conductor that is landed at one end alone, with its live end's node and a way back. */
function deadEnds({ circuit, nodes, volts }: Wiring, backs: ReadonlyMap<string, number>) {
	return circuit.conductors.flatMap((conductor) => {
		const [landed, ...more] = conductor.ends.filter(({ point }) => point !== undefined);
		const from = nodes[landed?.point ?? -1];
		const to = backs.get(landed?.enclosure.name ?? "");
		if (from === undefined || to === undefined || more.length > 0 || Math.abs(volts[from] ?? 0) <= touchLimit)
			return [];
		return [{ conductor, from, to }];
	});
}

/** With one device open, by itself or by hand: what goes past it. */
export function pastDevice(frame: Frame, quiet: Wiring, { part, groups, poles }: Device, tell: Tell): void {
	if (groups.length === 0) return;
	const { circuit, state, nodes, opened } = quiet;
	const open = { sources: opened.sources, groups: new Set([...opened.groups, ...groups]) };
	const { wiring } = settle(frame, wire(frame, state, open), "works");
	underLoad(frame, wiring, tell);
	for (const { from, to } of poles) {
		const figure = Math.min(touchVolts(wiring, from), touchVolts(wiring, to));
		if (figure > touchLimit) tell({ sort: "live past its device", at: part, state, figure, fault: part });
	}
	const bare = wire(frame, state, opened, [], "unloaded");
	for (const { between } of circuit.loads) {
		const [from = 0, to = 0] = between.map((point) => nodes[point] ?? 0);
		if (Math.abs((quiet.volts[from] ?? 0) - (quiet.volts[to] ?? 0)) < touchLimit) continue;
		const drawn = solve(
			bare.eliminated,
			new Map([
				[from, -1],
				[to, 1],
			]),
		);
		const share = Math.max(...poles.map((pole) => Math.abs(amperesIn({ ...pole, volts: 0 }, drawn))));
		if (share < 0.05) continue;
		for (const point of between) {
			const figure = touchVolts(wiring, nodes[point] ?? 0);
			if (figure <= touchLimit) continue;
			tell({ sort: "live past its device", at: circuit.points[point]?.name ?? "", state, figure, fault: part });
		}
	}
}

/** The live nodes of each enclosure, and the one there that current would go back by. */
function insulations({ circuit, nodes, volts }: Wiring) {
	const backs = new Map<string, number>();
	const lives = new Map<string, Set<number>>();
	for (const { index, enclosure, role } of circuit.points) {
		const node = nodes[index] ?? 0;
		if (Math.abs(volts[node] ?? 0) > touchLimit)
			lives.set(enclosure.name, (lives.get(enclosure.name) ?? new Set()).add(node));
		else if (role === "neutral" || (role === "ground" && !backs.has(enclosure.name))) backs.set(enclosure.name, node);
	}
	return { lives, backs };
}
