/*
 * What the tablet keeps under the name of its seat. A browser that keeps nothing (private window,
 * full disk) still works, from memory: isLasting() says which of the two it is.
 */
export class Shelf {

	constructor(seat, storage = window.localStorage) {
		this.prefix = "rimebook/" + seat + "/";
		this.storage = storage;
		this.memory = new Map();
		this.lasting = true;
	}

	read(name, otherwise) {
		try {
			const text = this.memory.get(name) ?? this.storage.getItem(this.prefix + name);
			return text === null ? otherwise : JSON.parse(text);
		}
		catch (unreadable) {
			return otherwise;
		}
	}

	write(name, value) {
		const text = JSON.stringify(value);
		try {
			this.storage.setItem(this.prefix + name, text);
			this.memory.delete(name);
			this.lasting = true;
		}
		catch (full) {
			this.memory.set(name, text);
			this.lasting = false;
		}
	}

	remove(name) {
		this.memory.delete(name);
		try {
			this.storage.removeItem(this.prefix + name);
		}
		catch (closed) {
			this.lasting = false;
		}
	}

	isLasting() {
		return this.lasting;
	}

}
