/* A search field over the codes of the table of values. */
const MOST = 8;

/* How well a code fits what is typed; none if it does not. The smaller the better. */
export function fit(typed, code, name) {
	const wanted = typed.trim().toLowerCase();
	const sign = code.toLowerCase();
	if (sign === wanted) {
		return 0;
	}
	if (sign.startsWith(wanted)) {
		return 1;
	}
	const parts = (sign + " " + name.toLowerCase()).split(/[^a-z0-9]+/);
	const words = wanted.split(/\s+/);
	return words.every((word) => parts.some((part) => part.startsWith(word))) ? 2 : undefined;
}

export class Search {

	#field;

	#list;

	#none;

	#found = [];

	#at = 0;

	/* chosen(code) hears what was chosen. */
	constructor(field, list, none, chosen) {
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

	/* The code that Enter would choose; none where nothing fits. */
	get code() {
		return this.#found[this.#at]?.dataset.code;
	}

	move(by) {
		if (this.#found.length > 0) {
			this.#at = (this.#at + by + this.#found.length) % this.#found.length;
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
		this.#at = 0;
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
		if (this.#found.length > 0) {
			this.#field.setAttribute("aria-activedescendant", this.#found[this.#at].id);
		}
		else {
			this.#field.removeAttribute("aria-activedescendant");
		}
	}

}
