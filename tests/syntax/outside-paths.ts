// Names behind `use` that lead nowhere, on any system.

/** Spellings that must never reach anything outside of the folder, whatever lies there. */
export const outside = [
	..."../feed.ferrule|../../feed.ferrule|./../feed.ferrule|a/../../feed.ferrule|a/b/../../../feed.ferrule|..//feed.ferrule".split(
		"|",
	),
	..."/feed.ferrule|//host/feed.ferrule|/../feed.ferrule|///feed.ferrule|/dev/zero|/dev/stdin|/proc/self/environ".split(
		"|",
	),
	..."\\feed.ferrule|..\\feed.ferrule|a\\..\\..\\feed.ferrule|\\\\host\\feed.ferrule|C:\\feed.ferrule|a/..\\feed.ferrule".split(
		"|",
	),
	..."C:feed.ferrule|C:/feed.ferrule|file:///feed.ferrule|file:feed.ferrule|data:,feed.ferrule|feed.ferrule:x.ferrule".split(
		"|",
	),
	..."con.ferrule|NUL.ferrule|a/aux.ferrule|com1.ferrule|lpt9.ferrule|nul|prn.x.ferrule".split("|"),
	..."feed.ferrule\u0000|\u0000.ferrule|fe\u0001ed.ferrule|fe\u202eed.ferrule|fe\u200bed.ferrule".split("|"),
	..."| |.|..|./|../|a/..|a./feed.ferrule|a /feed.ferrule|.../feed.ferrule|feed.ferrule.|feed.ferrule ".split("|"),
	..."feed|feed.txt|feed.ferrule/|feed.FERRULE|feed.ferrule.exe".split("|"),
];
