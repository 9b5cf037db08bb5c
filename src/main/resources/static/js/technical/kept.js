/*
 * Acts without an answer, kept by this tab through a reload and a new sign-in. They belong to whoever was
 * signed in: nobody else sends them. Another tab of the same browser has its own.
 */
export class Kept {

	#key;

	constructor(path, who) {
		this.#key = "technical " + path + " " + who;
	}

	read() {
		try {
			return JSON.parse(sessionStorage.getItem(this.#key) ?? "[]");
		}
		catch {
			return [];
		}
	}

	write(acts) {
		try {
			if (acts.length > 0) {
				sessionStorage.setItem(this.#key, JSON.stringify(acts));
			}
			else {
				sessionStorage.removeItem(this.#key);
			}
		}
		catch {
			// A browser that keeps nothing: the page itself still has them.
		}
	}

}
