/*
 * What this tablet has to tell the service: cards, and that a remark was seen. A thing is put here before
 * it is sent and stays: "waiting", then "received", "refused", or "differs" while the service has another
 * version and the judge has not chosen; "aside" once the service counts it no longer. Nothing is forgotten because a reload or a flat battery came
 * between. Waiting things go out in the order they were put in, one at a time, with the same identity until
 * the service answers.
 *
 * deliver(thing) resolves to { outcome: "received", receivedAt }, { outcome: "refused", sentence },
 * { outcome: "differs", sentence, received }, { outcome: "too-early", sentence }, { outcome: "seat-lost" } or
 * { outcome: "unreachable" }.
 */
import { attempt, note } from "./fault.js";

const FIRST_WAIT = 1000;
const LONGEST_WAIT = 15000;
const ANSWERS = ["received", "refused", "differs"];

export class Outbox {

	constructor(shelf, deliver, onChange) {
		this.shelf = shelf;
		this.deliver = deliver;
		this.onChange = onChange;
		/* Called before the page is drawn, when what is kept here has changed. */
		this.onCards = () => {};
		this.wait = FIRST_WAIT;
		this.sending = false;
		this.timer = undefined;
		this.life = undefined;
		this.early = new Set();
		this.ended = [];
	}

	/* Each thing keeps in which life of the service it was put here, until one says that it has it. */
	put(thing) {
		this.keep([...this.things(), { ...thing, state: "waiting", life: this.life }]);
		this.flush();
	}

	/* Keep a version that the service has, so that it counts here before the next look at the table. */
	learn(card) {
		this.keep([...this.things(), { ...card, state: "received", life: this.life }]);
	}

	things() {
		return this.shelf.read("cards", []);
	}

	cards() {
		return this.things().filter(isCard);
	}

	/* The newest card of a performance that was sent and not refused. */
	newestOf(performance) {
		return this.cards()
			.filter((card) => card.performance === performance && ["waiting", "received"].includes(card.state))
			.reduce((newest, card) => (newest && newest.sequence > card.sequence ? newest : card), undefined);
	}

	waiting() {
		return this.things().filter((thing) => thing.state === "waiting");
	}

	/* What the service has said that it has, so far. */
	receivedIds() {
		return new Set(this.cards().filter((card) => card.state === "received").map(({ id }) => id));
	}

	/*
	 * Offer what the service acknowledged and does not have, under the same identity. What it acknowledges once
	 * more and still does not have was set aside there and counts no longer.
	 */
	offerAgain(performance, newest, known) {
		const things = this.things().map((thing) => (known.has(thing.id) && thing.performance === performance ? offered(thing, newest) : thing));
		if (JSON.stringify(things) !== JSON.stringify(this.things())) {
			this.keep(things);
			this.flush();
		}
	}

	/*
	 * The service was started from a copy, and may lack what it acknowledged in a life before: that is brought back under
	 * the same identity, with its first receipt, whatever has become of its performance. lives are the service's, the
	 * newest first. A card of any other service stays where it is.
	 */
	bringBack([, ...before], isThere) {
		const things = this.things().map((thing) => (isLost(thing, before) && !isThere(thing) ? returning(thing) : thing));
		if (things.some((thing, at) => thing.state !== this.things()[at].state)) {
			this.keep(things);
			this.flush();
		}
	}

	/* What came too early for a team goes out as soon as it is called again; what was ended is never too early. */
	nowOpen(open, ended) {
		this.ended = ended;
		if (this.waiting().some(({ id, performance }) => this.early.has(id) && [...open, ...ended].includes(performance))) {
			this.early.clear();
			this.flush();
		}
	}

	/* The number of the newest version that was set aside, 0 for none. */
	setAside(performance) {
		return Math.max(0, ...this.cards().filter((card) => card.performance === performance && card.state === "aside").map(({ sequence }) => sequence));
	}

	waitingCards() {
		return this.waiting().filter(isCard);
	}

	/* The oldest card that met another version at the service. */
	differing() {
		return this.cards().find((card) => card.state === "differs");
	}

	hasSeen(remark) {
		return this.things().some((thing) => thing.kind === "seen" && thing.remark === remark);
	}

	/* Refusals that the judge has not put away yet. */
	refusals() {
		return this.cards().filter((card) => card.state === "refused" && !card.seen);
	}

	putAway(id) {
		this.change(id, { seen: true });
	}

	/* The judge has chosen; this version is no longer sent. */
	settle(id) {
		this.change(id, { state: "replaced" });
	}

	/* Send what waits now; if nothing waits this does nothing. */
	async flush() {
		clearTimeout(this.timer);
		if (this.sending) {
			return;
		}
		this.sending = true;
		try {
			await this.sendAll();
		}
		finally {
			this.sending = false;
		}
		if (this.waiting().length > 0) {
			this.tryAgainLater();
		}
	}

	/* Until there is no answer. What cannot be told at all, or not yet, holds nothing else up. */
	async sendAll() {
		const passed = new Set();
		const next = () => this.waiting().find(({ id }) => !passed.has(id));
		for (let thing = next(); thing; thing = next()) {
			const { outcome, ...words } = this.understood(thing, await this.told(thing));
			if (outcome === "fault") {
				passed.add(thing.id);
			}
			else if (outcome === "too-early") {
				passed.add(thing.id);
				this.early.add(thing.id);
			}
			else if (ANSWERS.includes(outcome)) {
				this.wait = FIRST_WAIT;
				this.change(thing.id, { state: outcome, ...words });
			}
			else {
				return;
			}
		}
	}

	understood({ performance }, answer) {
		return answer.outcome === "too-early" && this.ended.includes(performance) ? { ...answer, outcome: "refused" } : answer;
	}

	async told(thing) {
		try {
			return await this.deliver(thing);
		}
		catch (fault) {
			note("sending", fault);
			return { outcome: "fault" };
		}
	}

	tryAgainLater() {
		this.timer = setTimeout(() => this.flush(), this.wait);
		this.wait = Math.min(this.wait * 2, LONGEST_WAIT);
	}

	change(id, words) {
		this.keep(this.things().map((thing) => (thing.id === id ? { ...thing, ...words } : thing)));
	}

	keep(things) {
		this.shelf.write("cards", things);
		attempt("cards", this.onCards);
		attempt("drawing", this.onChange);
	}

}

function offered({ again, ...card }, newest) {
	if (card.sequence <= newest) {
		return card;
	}
	return again ? { ...card, state: "aside" } : { ...card, state: "waiting", again: true };
}

function isLost(thing, before) {
	return isCard(thing) && thing.state === "received" && Boolean(thing.receivedAt) && before.includes(thing.life);
}

function returning({ again, ...card }) {
	return { ...card, state: "waiting", returned: { life: card.life, receivedAt: card.receivedAt } };
}

function isCard(thing) {
	return thing.kind !== "seen";
}
