/*
 * The files of a segment in this browser's memory, by version. Each is fetched whole, one after the other, and tried again
 * until it is there; one that came short is none.
 *
 * fetchFile(file) resolves to a blob and rejects where there is no contact.
 */
export class Loaded {

	constructor(fetchFile, changed) {
		this.fetchFile = fetchFile;
		this.changed = changed;
		this.blobs = new Map();
		this.wanted = [];
		this.loading = false;
	}

	/* What the list has now: [{ version, url, bytes }], in order. What it has no longer is let go. */
	want(files) {
		this.wanted = files;
		const versions = new Set(files.map(({ version }) => version));
		[...this.blobs.keys()].filter((version) => !versions.has(version)).forEach((version) => this.blobs.delete(version));
		this.changed();
	}

	has(version) {
		return this.blobs.has(version);
	}

	blob(version) {
		return this.blobs.get(version);
	}

	count() {
		return this.wanted.filter(({ version }) => this.has(version)).length;
	}

	/* Loads what is not here yet; gives back whether everything is. */
	async load() {
		if (this.loading) {
			return false;
		}
		this.loading = true;
		try {
			for (let next = this.missing(); next; next = this.missing()) {
				const blob = await this.fetchFile(next);
				if (blob.size !== next.bytes) {
					throw new Error("came short");
				}
				this.blobs.set(next.version, blob);
				this.changed();
			}
			return true;
		}
		catch {
			return false;
		}
		finally {
			this.loading = false;
		}
	}

	missing() {
		return this.wanted.find(({ version }) => !this.has(version));
	}

}
