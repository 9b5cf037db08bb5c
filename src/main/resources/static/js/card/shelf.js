/*
 * What the tablet keeps under the name of its seat. Reading is from memory; each change is also written to
 * the browser's database, strictly: isKept() says that the disk has it, whatever becomes of the browser
 * then. A browser that keeps nothing (private window, full disk) still works, from memory: isLasting() says
 * which of the two it is. Needs no secure context. Two pages of one browser tell each other what they change.
 */
const NAME = "rimebook";
const STORE = "shelf";
const PATIENCE = 15000;

const memory = new Map();
const base = await opened();
const pages = globalThis.BroadcastChannel && new BroadcastChannel("rimebook/shelf");

/* The database with everything it holds in memory; undefined if this browser has none. */
async function opened() {
	try {
		const found = await within(open());
		for (const [key, text] of await within(all(found))) {
			memory.set(key, text);
		}
		await within(moveOldIn(found));
		return found;
	}
	catch {
		return undefined;
	}
}

/* A database that does not answer is none. */
function within(promise) {
	return Promise.race([promise, new Promise((resolve, reject) => setTimeout(() => reject(new Error("no answer")), PATIENCE))]);
}

function open() {
	return new Promise((resolve, reject) => {
		const asked = indexedDB.open(NAME, 1);
		asked.onupgradeneeded = () => asked.result.createObjectStore(STORE);
		asked.onsuccess = () => resolve(asked.result);
		asked.onerror = () => reject(asked.error);
	});
}

function all(found) {
	return new Promise((resolve, reject) => {
		const held = [];
		const asked = found.transaction(STORE).objectStore(STORE).openCursor();
		asked.onerror = () => reject(asked.error);
		asked.onsuccess = () => {
			const at = asked.result;
			if (at) {
				held.push([at.key, at.value]);
				at.continue();
			}
			else {
				resolve(held);
			}
		};
	});
}

/* Resolves once the change is on the disk. A text that is undefined is taken away. */
function written(found, key, text) {
	return new Promise((resolve, reject) => {
		const change = found.transaction(STORE, "readwrite", { durability: "strict" });
		const shelf = change.objectStore(STORE);
		if (text === undefined) {
			shelf.delete(key);
		}
		else {
			shelf.put(text, key);
		}
		change.oncomplete = () => resolve();
		change.onabort = () => reject(change.error);
	});
}

/* What an earlier version of this page kept elsewhere; taken away there when it is safe here. */
async function moveOldIn(found) {
	for (const key of Object.keys(localStorage).filter((one) => one.startsWith("rimebook/"))) {
		if (!memory.has(key)) {
			memory.set(key, localStorage.getItem(key));
			await written(found, key, memory.get(key));
		}
		localStorage.removeItem(key);
	}
}

export class Shelf {

	constructor(seat) {
		this.prefix = "rimebook/" + seat + "/";
		this.pending = new Map();
		this.unkept = new Set();
		this.turn = 0;
		/* Called when something was kept, could not be kept, or was changed by another page. */
		this.onChange = () => {};
		pages?.addEventListener("message", ({ data }) => {
			this.remember(data.key, data.text);
			this.onChange();
		});
	}

	read(name, otherwise) {
		try {
			return memory.has(this.prefix + name) ? JSON.parse(memory.get(this.prefix + name)) : otherwise;
		}
		catch {
			return otherwise;
		}
	}

	write(name, value) {
		this.keep(name, JSON.stringify(value));
	}

	remove(name) {
		this.keep(name, undefined);
	}

	keep(name, text) {
		const turn = ++this.turn;
		const key = this.prefix + name;
		this.remember(key, text);
		pages?.postMessage({ key, text });
		this.pending.set(name, turn);
		written(base, key, text).then(() => this.settle(name, turn), () => this.fail(name));
	}

	remember(key, text) {
		if (text === undefined) {
			memory.delete(key);
		}
		else {
			memory.set(key, text);
		}
	}

	settle(name, turn) {
		if (this.pending.get(name) === turn) {
			this.pending.delete(name);
			this.unkept.delete(name);
		}
		const again = [...this.unkept];
		this.unkept.clear();
		again.forEach((one) => this.keep(one, memory.get(this.prefix + one)));
		this.onChange();
	}

	fail(name) {
		this.unkept.add(name);
		this.onChange();
	}

	/* Whether that lies on the disk as it is now; without a name, whether everything does. */
	isKept(name) {
		return name === undefined ? this.pending.size === 0 : !this.pending.has(name);
	}

	isLasting() {
		return base !== undefined && this.unkept.size === 0;
	}

}
