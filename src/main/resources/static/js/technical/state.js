/*
 * What is in hand at the technical desk, apart from the page: which element is chosen, whether a code that is
 * typed is called, inserted or put in the place of another, what was refused, and whether reading back waits for
 * what is still on its way. A list is { sequence, rows }; a row is what the page says of it: id, number, code and
 * what can be done to it.
 */
const TAKES = { call: "CALL", insert: "INSERT", change: "CODE" };
const WITHOUT_ELEMENT = ["CALL", "UNDO"];

export class DeskState {

	#list;

	#chosen;

	#mode = "call";

	#fromList = false;

	#refused = [];

	#onward = false;

	constructor(list) {
		this.#list = list;
		this.#chosen = list.rows.at(-1)?.id ?? "";
	}

	/* "call", "insert" or "change": what becomes of a code that is typed. */
	get mode() {
		return this.#mode;
	}

	/* The row that is chosen; none in an empty list. */
	get row() {
		return this.#list.rows.find(({ id }) => id === this.#chosen);
	}

	choose(id) {
		this.#chosen = id;
	}

	/*
	 * The list as it is now. What was just called is chosen, unless the hands are in the list or in the middle of
	 * something; in the place of an element that is gone comes the one that moved up.
	 */
	renew(list, inList) {
		const before = this.#list.rows.map(({ id }) => id);
		const at = before.indexOf(this.#chosen);
		const added = list.rows.filter(({ id }) => !before.includes(id));
		this.#list = list;
		if (!inList && this.#mode === "call" && added.length > 0) {
			this.#chosen = added.at(-1).id;
		}
		if (!this.row) {
			this.#chosen = (list.rows[at] ?? list.rows.at(-1))?.id ?? "";
			this.#mode = "call";
		}
	}

	/* Insert before the chosen element, or change its code. Tells whether there is one. */
	begin(mode, inList) {
		if (!this.row) {
			return false;
		}
		this.#mode = mode;
		this.#fromList = inList;
		return true;
	}

	/* Back to calling. */
	leave() {
		this.#mode = "call";
	}

	/* Whether the hands go back to the list, where they came from; asked once. */
	goesToList() {
		const goes = this.#fromList;
		this.#fromList = false;
		return goes;
	}

	/* The act that a code typed now is for. */
	get takes() {
		return TAKES[this.#mode];
	}

	/* What the service is told of an act, the chosen element with it; nothing where it needs one and there is none. */
	fields(act, value) {
		if (WITHOUT_ELEMENT.includes(act)) {
			return [["act", act], ["value", value]];
		}
		return this.row && [["act", act], ["value", value], ["element", this.#chosen]];
	}

	isPossible(act, value) {
		if (act === "UNDO") {
			return this.#list.sequence !== "0";
		}
		return this.row !== undefined && isPossibleOn(this.row, act, value);
	}

	/* The acts that an answer refused, none for one that was done. */
	answered(refused, inList) {
		this.#refused = refused;
		if (refused.length > 0) {
			this.#fromList = inList;
		}
	}

	/* What was refused is decided now: done again, or left. */
	decide() {
		const refused = this.#refused;
		this.#refused = [];
		return refused;
	}

	/* The list is read back as it is once everything that was called has arrived. */
	askOnward() {
		this.#onward = true;
	}

	/* Whether to read back now that so many acts wait; what was refused has to be decided first. */
	goesOnward(waiting) {
		if (waiting > 0 || !this.#onward) {
			return false;
		}
		this.#onward = false;
		return this.#refused.length === 0;
	}

}

function isPossibleOn(row, act, value) {
	switch (act) {
		case "LEVEL": return (row.levels ?? "").includes(value);
		case "PART": return value ? (row.parts ?? "").includes(value) : row.withoutPart === "true";
		case "DOWNGRADE": return row.downgrade === "true";
		default: return true;
	}
}
