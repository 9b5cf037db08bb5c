/*
 * The cards of this tablet. A card is put here before it is sent and stays, first "waiting", then
 * "received" or "refused": nothing is forgotten because a reload or a flat battery came between. Waiting
 * cards go out in the order they were put in, one at a time, with the same identity until the service answers.
 *
 * deliver(card) resolves to { outcome: "received", receivedAt }, { outcome: "refused", sentence },
 * { outcome: "seat-lost" } or { outcome: "unreachable" }.
 */

const FIRST_WAIT = 1000;
const LONGEST_WAIT = 15000;

export class Outbox {

	constructor(shelf, deliver, onChange) {
		this.shelf = shelf;
		this.deliver = deliver;
		this.onChange = onChange;
		this.wait = FIRST_WAIT;
		this.sending = false;
		this.timer = undefined;
	}

	put(card) {
		this.keep([...this.cards(), { ...card, state: "waiting" }]);
		this.flush();
	}

	cards() {
		return this.shelf.read("cards", []);
	}

	/* The newest card of a performance that was not refused. */
	newestOf(performance) {
		return this.cards()
			.filter((card) => card.performance === performance && card.state !== "refused")
			.reduce((newest, card) => (newest && newest.sequence > card.sequence ? newest : card), undefined);
	}

	waiting() {
		return this.cards().filter((card) => card.state === "waiting");
	}

	/* Refusals that the judge has not put away yet. */
	refusals() {
		return this.cards().filter((card) => card.state === "refused" && !card.seen);
	}

	putAway(id) {
		this.change(id, { seen: true });
	}

	/* Send what waits now; without waiting cards this does nothing. */
	async flush() {
		clearTimeout(this.timer);
		if (this.sending) {
			return;
		}
		this.sending = true;
		try {
			while (this.waiting().length > 0 && await this.sendOne(this.waiting()[0])) {
				this.wait = FIRST_WAIT;
			}
		}
		finally {
			this.sending = false;
		}
		if (this.waiting().length > 0) {
			this.tryAgainLater();
		}
	}

	async sendOne(card) {
		const { outcome, ...words } = await this.deliver(card);
		if (outcome !== "received" && outcome !== "refused") {
			return false;
		}
		this.change(card.id, { state: outcome, ...words });
		return true;
	}

	tryAgainLater() {
		this.timer = setTimeout(() => this.flush(), this.wait);
		this.wait = Math.min(this.wait * 2, LONGEST_WAIT);
	}

	change(id, words) {
		this.keep(this.cards().map((card) => (card.id === id ? { ...card, ...words } : card)));
	}

	keep(cards) {
		this.shelf.write("cards", cards);
		this.onChange();
	}

}
