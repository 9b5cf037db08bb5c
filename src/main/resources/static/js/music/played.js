const PREFIX = "rimebook.music.played.";

/* Under which keys desks of other segments left something on this device. */
export function others(disk, key) {
	return Object.keys(disk)
		.filter((name) => name.startsWith(PREFIX) && name !== PREFIX + key)
		.map((name) => name.slice(PREFIX.length));
}

/*
 * What was played and the service does not know yet. It lies on this device until the service says that it has it; it is
 * told one after the other, each under its own identity, so telling twice counts once.
 *
 * tell(play) resolves to "noted", "refused" or anything else for "not now".
 */
export class Played {

	constructor(disk, key, tell, changed) {
		this.disk = disk;
		this.key = PREFIX + key;
		this.tell = tell;
		this.changed = changed;
		this.telling = false;
		this.memory = this.read();
	}

	put(play) {
		this.keep([...this.memory, play]);
		return this.flush();
	}

	waiting() {
		return this.memory.filter((play) => !play.refused);
	}

	refused() {
		return this.memory.filter((play) => play.refused);
	}

	async flush() {
		if (this.telling) {
			return;
		}
		this.telling = true;
		try {
			let next = this.waiting()[0];
			while (next && await this.tellOne(next)) {
				next = this.waiting()[0];
			}
		}
		finally {
			this.telling = false;
		}
	}

	/* Whether the next one may be told, too. */
	async tellOne(play) {
		const answer = await this.tell(play).catch(() => "not now");
		if (answer === "noted") {
			this.keep(this.memory.filter(({ id }) => id !== play.id));
		}
		else if (answer === "refused") {
			this.keep(this.memory.map((one) => (one.id === play.id ? { ...one, refused: true } : one)));
		}
		return answer === "noted" || answer === "refused";
	}

	/* A disk that is full or forbidden: then it is told from memory while the page is open. */
	keep(plays) {
		this.memory = plays;
		try {
			this.disk.setItem(this.key, JSON.stringify(plays));
		}
		catch {
			// Kept in memory alone.
		}
		this.changed();
	}

	read() {
		try {
			const kept = JSON.parse(this.disk.getItem(this.key) ?? "[]");
			return Array.isArray(kept) ? kept : [];
		}
		catch {
			return [];
		}
	}

}
