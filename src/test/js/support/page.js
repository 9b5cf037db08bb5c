/* As much of a page as scripts touch that draw nothing. Imported before them. A timer keeps no test from ending. */
const plainTimeout = globalThis.setTimeout;

globalThis.setTimeout = (...given) => plainTimeout(...given).unref();
globalThis.window = new EventTarget();
globalThis.document = { querySelector: () => ({ toggleAttribute() {} }), getElementById: () => null };

/* A place where a browser keeps texts by name. */
export function storage(kept = {}) {
	const methods = {
		getItem: (name) => kept[name] ?? null,
		setItem: (name, text) => (kept[name] = String(text)),
		removeItem: (name) => delete kept[name],
	};
	for (const [name, value] of Object.entries(methods)) {
		Object.defineProperty(kept, name, { value });
	}
	return kept;
}

/* Let everything happen that can happen without time passing. */
export async function settled() {
	for (let turn = 0; turn < 20; turn++) {
		await new Promise((resolve) => setImmediate(resolve));
	}
}
