// Files that a build takes in as text: `import text from "../../seeds/x.ferrule?raw"`.
declare module "*?raw" {
	const text: string;
	export default text;
}
