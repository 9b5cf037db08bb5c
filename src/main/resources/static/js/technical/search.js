/* A search field over the codes of the table of values. */
const MOST = 8;

/* How well a code fits what is typed; none if it does not. The smaller the better; only 0 and 1 are that code. */
export function fit(typed, code, name) {
	const wanted = typed.trim().toLowerCase();
	const sign = code.toLowerCase();
	if (sign === wanted) {
		return code === typed.trim() ? 0 : 1;
	}
	if (sign.startsWith(wanted)) {
		return 2;
	}
	const parts = (sign + " " + name.toLowerCase()).split(/[^a-z0-9]+/);
	const words = wanted.split(/\s+/);
	return words.every((word) => parts.some((part) => part.startsWith(word))) ? 3 : undefined;
}

export class Search {

	#field;

	#list;

	#none;

	#refusal;

	#found = [];

	#at = -1;

	/* chosen(code) hears what was chosen; refusal is where it is said that nothing was. */
	constructor(field, list, none, refusal, chosen) {
		this.#refusal = refusal;
		this.#field = field;
		this.#list = list;
		this.#none = none;
		field.addEventListener("input", () => this.#look());
		list.addEventListener("mousedown", (event) => event.preventDefault());
		list.addEventListener("click", (event) => {
			const option = event.target.closest("[role=option]");
			if (option) {
				chosen(option.dataset.code);
			}
		});
	}

	get empty() {
		return this.#field.value.trim() === "";
	}

	/* The code that was typed in full or chosen with the arrows; none otherwise, however much one is like it. */
	get code() {
		return this.#found[this.#at]?.dataset.code;
	}

	/* Say that what is typed is no code, so that nothing was called. */
	refuse() {
		this.#refusal.textContent = this.#refusal.dataset.word.replace("{0}", this.#field.value.trim());
		this.#refusal.hidden = false;
	}

	move(by) {
		if (this.#found.length > 0) {
			const from = this.#at < 0 && by < 0 ? 0 : this.#at;
			this.#at = (from + by + this.#found.length) % this.#found.length;
			this.#show();
		}
	}

	clear() {
		this.#field.value = "";
		this.#look();
	}

	#look() {
		const all = Array.from(this.#list.children);
		const fits = this.empty ? [] : all.map((option, at) => ({ option, at, rank: fit(this.#field.value, option.dataset.code, option.dataset.name) }))
			.filter(({ rank }) => rank !== undefined)
			.sort((one, other) => one.rank - other.rank || one.at - other.at);
		this.#found = fits.slice(0, MOST).map(({ option }) => option);
		const typed = fits.filter(({ rank }) => rank <= 1);
		this.#at = typed.length === 1 || typed[0]?.rank === 0 ? 0 : -1;
		this.#refusal.hidden = true;
		all.forEach((option) => (option.hidden = true));
		[...this.#found].reverse().forEach((option) => this.#list.prepend(option));
		this.#none.hidden = this.empty || this.#found.length > 0;
		this.#show();
	}

	#show() {
		this.#found.forEach((option, at) => {
			option.hidden = false;
			option.setAttribute("aria-selected", String(at === this.#at));
		});
		this.#list.hidden = this.#found.length === 0;
		this.#field.setAttribute("aria-expanded", String(this.#found.length > 0));
		if (this.#at >= 0) {
			this.#field.setAttribute("aria-activedescendant", this.#found[this.#at].id);
		}
		else {
			this.#field.removeAttribute("aria-activedescendant");
		}
	}

}
