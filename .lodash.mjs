// Stands in for lodash-es where the parser library is bundled: the few functions it calls, on plain arrays and objects, by what
// the language itself has. The library's own versions were a fifth of the bundle and of its start.
const { hasOwn } = Object;
const rows = (collection) => (Array.isArray(collection) ? collection : Object.values(collection ?? {}));
const test = (check = identity) => (typeof check === "function" ? check : (value) => value[check]);

export const { assign } = Object;
export const { isArray } = Array;
export const keys = (object) => Object.keys(object ?? {});
export const values = (object) => Object.values(object ?? {});
export const identity = (value) => value;
export const noop = () => {};
export const isUndefined = (value) => value === undefined;
export const isFunction = (value) => typeof value === "function";
export const isString = (value) => typeof value === "string";
export const isRegExp = (value) => value instanceof RegExp;
export const isObject = (value) => value !== null && (typeof value === "object" || typeof value === "function");
export const isEmpty = (value) =>
	isArray(value) || isString(value) ? value.length === 0 : Object.keys(value ?? {}).length === 0;
export const has = (object, key) => object != null && hasOwn(object, key);
export const first = (array) => array?.[0];
export const last = (array) => array?.[array.length - 1];
export const drop = (array, count = 1) => array.slice(count);
export const dropRight = (array, count = 1) => array.slice(0, Math.max(0, array.length - count));
export const compact = (array) => array.filter(Boolean);
export const flatten = (array) => (array ?? []).flat();
export const uniq = (array) => [...new Set(array)];
export const indexOf = (array, value, from) => (array ?? []).indexOf(value, from);
export const includes = (collection, value) => (isString(collection) ? collection : rows(collection)).includes(value);
export const difference = (array, ...others) => {
	const excluded = new Set(others.flat());
	return array.filter((value) => !excluded.has(value));
};
export const clone = (value) => (isArray(value) ? value.slice() : isObject(value) ? { ...value } : value);
export const defaults = (object, ...sources) => {
	for (const source of sources) for (const key in source) if (object[key] === undefined) object[key] = source[key];
	return object;
};
export const upperFirst = (text) => text.charAt(0).toUpperCase() + text.slice(1);

export const forEach = (collection, visit) => {
	if (isArray(collection)) {
		for (let index = 0; index < collection.length; index++)
			if (visit(collection[index], index, collection) === false) break;
	} else for (const key of Object.keys(collection ?? {})) if (visit(collection[key], key, collection) === false) break;
	return collection;
};
export const map = (collection, change) =>
	isArray(collection)
		? collection.map(test(change))
		: Object.keys(collection ?? {}).map((key) => test(change)(collection[key], key, collection));
export const flatMap = (collection, change) => map(collection, change).flat();
export const filter = (collection, check) => rows(collection).filter(test(check));
export const reject = (collection, check) => rows(collection).filter((...args) => !test(check)(...args));
export const find = (collection, check) => rows(collection).find(test(check));
export const some = (collection, check) => rows(collection).some(test(check));
export const every = (collection, check) => rows(collection).every(test(check));
export const reduce = (collection, join, start) => {
	let result = start;
	forEach(collection, (value, key) => {
		result = join(result, value, key, collection);
	});
	return result;
};
export const pickBy = (object, check) =>
	Object.fromEntries(Object.entries(object).filter(([key, value]) => test(check)(value, key)));
export const groupBy = (collection, by) => {
	const groups = {};
	for (const value of rows(collection)) {
		const key = test(by)(value);
		groups[key] = [...(groups[key] ?? []), value];
	}
	return groups;
};
