/*
 * A browser's database as far as the shelf uses it. What a change wrote is on the disk only once it completed, so
 * a browser that is killed before has never written it. A test can hold changes up, fill the disk and take it away.
 */
export class Disk {

	#held = [];

	held = false;

	full = false;

	answers = true;

	broken = false;

	unreadable = false;

	version = 0;

	stores = new Set();

	asked = 0;

	stored = new Map();

	durabilities = new Set();

	/* Let the oldest change that is held up through. */
	async letThrough() {
		this.#held.shift()();
		await turns();
	}

	/* What a page of this version opens; an older one is refused. */
	open(name, version) {
		this.asked++;
		const request = { result: this };
		if (this.answers) {
			setImmediate(() => this.#answer(request, version));
		}
		return request;
	}

	#answer(request, version) {
		if (this.broken || version < this.version) {
			request.onerror();
			return;
		}
		if (version > this.version) {
			this.version = version;
			request.onupgradeneeded();
		}
		request.onsuccess();
	}

	createObjectStore(store) {
		this.stores.add(store);
	}

	transaction(store, mode, options) {
		if (!this.stores.has(store)) {
			throw new Error("no such store: " + store);
		}
		const changes = [];
		const change = { objectStore: () => objectStore(this, changes) };
		if (mode === "readwrite") {
			this.durabilities.add(options.durability);
			this.#commit(() => this.#write(change, changes));
		}
		return change;
	}

	#commit(write) {
		if (this.held) {
			this.#held.push(write);
		}
		else {
			setImmediate(write);
		}
	}

	#write(change, changes) {
		if (this.full) {
			change.error = new Error("quota exceeded");
			change.onabort();
			return;
		}
		changes.forEach((each) => each());
		change.oncomplete();
	}

}

function objectStore({ stored, unreadable }, changes) {
	return {
		put: (text, key) => changes.push(() => stored.set(key, text)),
		delete: (key) => changes.push(() => stored.delete(key)),
		openCursor: () => (unreadable ? unreadableCursor() : cursor([...stored])),
	};
}

function unreadableCursor() {
	const request = {};
	setImmediate(() => request.onerror());
	return request;
}

function cursor(entries) {
	const request = {};
	const goTo = (at) => setImmediate(() => {
		const [key, value] = entries[at] ?? [];
		request.result = at < entries.length ? { key, value, continue: () => goTo(at + 1) } : null;
		request.onsuccess();
	});
	goTo(0);
	return request;
}

async function turns() {
	for (let turn = 0; turn < 5; turn++) {
		await new Promise((resolve) => setImmediate(resolve));
	}
}
