/*
 * What this tablet knows of the card at hand, whichever way the event is judged: the service's table, what
 * is being typed, and which version of the card counts. Nothing here touches the page.
 *
 * A kind of card adds: kind, nothing(), asTyped(version), content(), isWhole(), isSame(typed, version),
 * isAnything(typed), received() (the service's cards of this seat) and fromService(version).
 */

/* What the service said last is shown without contact for so long; then it may be another day. */
const RECENT = 3 * 3600 * 1000;

export class Card {

	constructor(shelf, outbox, newId) {
		this.shelf = shelf;
		this.outbox = outbox;
		this.newId = newId;
		this.table = undefined;
		this.turned = undefined;
		this.typed = this.nothing();
		this.refusal = undefined;
		this.contact = "starting";
		outbox.onCards = () => this.follow();
	}

	/*
	 * The service is believed: what it has acknowledged before it was looked at, and does not have, is offered
	 * again. known are the cards that were acknowledged then. What an earlier life of the service acknowledged, and
	 * this one does not show, is brought back.
	 */
	hear(table, known, lives = []) {
		this.take(table);
		this.keepTable(table, lives[0]);
		this.outbox.life = lives[0];
		this.outbox.bringBack(lives, (card) => this.received().some((there) => there.performance === card.performance && there.sequence >= card.sequence));
		this.open().forEach(({ performance }) => {
			const there = this.received().find((card) => card.performance === performance);
			this.outbox.offerAgain(performance, there?.sequence ?? 0, known);
		});
		this.outbox.nowOpen(this.open().map(({ performance }) => performance), table.ended ?? []);
	}

	/* The end of the record moves on with every act, and is kept elsewhere. */
	keepTable({ record, ...table }, life) {
		const text = JSON.stringify([table, life]);
		if (text !== this.tableKept) {
			this.tableKept = text;
			this.shelf.write("table", { table, life, at: Date.now() });
		}
	}

	/* Begun without contact: what the service said last. */
	recall() {
		const kept = this.shelf.read("table", null);
		if (this.table === undefined && kept && Math.abs(Date.now() - kept.at) < RECENT) {
			this.take(kept.table);
			this.outbox.life = kept.life;
		}
	}

	/* Take the service's table. Only when the performance at hand is over something else is laid before the judge. */
	take(table) {
		const isFirst = this.table === undefined;
		const before = isFirst ? this.shelf.read("open", []) : this.open();
		this.table = table;
		before.filter((one) => !this.isOpen(one.performance)).forEach((one) => this.leave(one));
		this.settleSame();
		if (isFirst || before.length !== this.open().length || before.some((one) => !this.isOpen(one.performance))) {
			this.shelf.write("open", this.open().map(({ performance, startNumber }) => ({ performance, startNumber })));
		}
		if (!this.isOpen(this.turned)) {
			this.turnHome(isFirst);
		}
		this.follow();
	}

	/* To the card that was left by a reload, else to the team on the ice. */
	turnHome(isFirst) {
		const left = isFirst ? this.shelf.read("turned", null) : null;
		const home = this.isOpen(left) ? left : this.table.now?.performance;
		if (isFirst || home !== this.turned) {
			this.turnTo(home);
		}
	}

	/* What can be marked: the team on the ice, and one whose cards were opened again. */
	open() {
		return [this.table?.now, this.table?.reopened].filter(Boolean);
	}

	isOpen(performance) {
		return this.open().some((one) => one.performance === performance);
	}

	/* The performance before the judge. */
	at() {
		return this.open().find((one) => one.performance === this.turned);
	}

	isAtReopened() {
		return this.turned !== undefined && this.turned === this.table?.reopened?.performance;
	}

	turnTo(performance) {
		this.turned = performance;
		this.shelf.write("turned", performance ?? null);
		this.typed = this.kept(performance);
		this.refusal = undefined;
	}

	/* What was typed on this tablet, else the card that counts, else nothing. */
	kept(performance) {
		const typed = performance && this.shelf.read("typed/" + performance, null);
		const newest = performance && this.newestOf(performance);
		return typed || (newest ? this.asTyped(newest) : this.nothing());
	}

	/*
	 * What nobody typed on this tablet goes with the card that counts: with a later version from elsewhere, and away
	 * with a kept card that the service refuses or has set aside.
	 */
	follow() {
		if (this.at() && this.isAnything(this.typed) && !this.shelf.read("typed/" + this.turned, null)) {
			this.typed = this.kept(this.turned);
		}
	}

	type(typed, refusal) {
		this.typed = typed;
		this.refusal = refusal;
		this.shelf.write("typed/" + this.turned, typed);
	}

	/* A change that was still being typed when the referee closed the cards is told, not dropped in silence. */
	leave({ performance, startNumber }) {
		this.shelf.write("left", { performance, startNumber });
		const typed = this.shelf.read("typed/" + performance, null);
		const newest = this.newestOf(performance);
		if (typed && newest && !this.isEnded(performance) && this.isAnything(typed) && !this.isSame(typed, newest) && !this.wasRefused(performance, typed)) {
			this.shelf.write("unsent", { startNumber, typed, newest });
		}
	}

	/* Whether the referee ended it without marks; nobody knows before the first look was answered. */
	isEnded(performance) {
		return (this.table?.ended ?? []).includes(performance);
	}

	/* The performance that was before the judge last, if the referee ended it without marks. */
	ended() {
		const left = this.shelf.read("left", undefined);
		return left && this.isEnded(left.performance) ? left : undefined;
	}

	/* What was sent and refused is told with its reason already. */
	wasRefused(performance, typed) {
		return this.outbox.cards().some((card) => card.performance === performance && ["refused", "differs"].includes(card.state) && this.isSame(typed, card));
	}

	unsent() {
		return this.shelf.read("unsent", null);
	}

	/* What officials changed in this seat's closed cards, until the judge has understood it on this tablet. */
	corrections() {
		const understood = this.shelf.read("understood", []);
		return (this.table?.corrected ?? []).filter(({ id }) => !understood.includes(id));
	}

	putAway(id) {
		if (id === "unsent") {
			this.shelf.remove("unsent");
		}
		else if (this.corrections().some((one) => one.id === id)) {
			this.shelf.write("understood", [...this.shelf.read("understood", []), id]);
		}
		else {
			this.outbox.putAway(id);
		}
	}

	send() {
		const { performance, startNumber, team } = this.at();
		this.put({ performance, startNumber, team, ...this.content() });
	}

	put(card) {
		const sequence = 1 + Math.max(this.newestOf(card.performance)?.sequence ?? 0, this.outbox.setAside(card.performance));
		this.outbox.put({ ...card, kind: this.kind, id: this.newId(), sequence });
	}

	/* Two versions of one card: the judge sends this tablet's as the next change, or keeps the one received. */
	chooseMine() {
		const { received, sentence, receivedAt, returned, ...mine } = this.differing();
		this.learn(mine, received);
		this.outbox.settle(mine.id);
		this.put(mine);
	}

	chooseReceived() {
		const { received, ...mine } = this.differing();
		this.learn(mine, received);
		this.outbox.settle(mine.id);
		this.shelf.remove("typed/" + mine.performance);
		if (this.turned === mine.performance) {
			this.typed = this.kept(mine.performance);
		}
	}

	/* Where both versions say the same there is nothing to choose. */
	settleSame() {
		const both = this.differing();
		if (both && this.isSame(this.asTyped(both), this.fromService(both.received))) {
			this.learn(both, both.received);
			this.outbox.settle(both.id);
		}
	}

	learn({ performance, startNumber, team }, received) {
		this.outbox.learn({ ...this.fromService(received), kind: this.kind, id: this.newId(), performance, startNumber, team });
	}

	differing() {
		return this.outbox.differing();
	}

	/* The version of a card that counts: on this tablet or at the service, whichever is later. */
	newestOf(performance) {
		const here = this.outbox.newestOf(performance);
		const there = this.received().find((card) => card.performance === performance);
		return here && !(there && there.sequence >= here.sequence) ? here : there;
	}

	newest() {
		return this.at() ? this.newestOf(this.turned) : undefined;
	}

	/* What the referee told the panel, with what this seat has seen here or elsewhere. */
	notices() {
		return (this.at()?.remarks ?? []).map((remark) => ({ ...remark, seen: remark.seen || this.outbox.hasSeen(remark.id) }));
	}

	see(remark) {
		if (!this.outbox.hasSeen(remark)) {
			this.outbox.put({ kind: "seen", id: this.newId(), remark, performance: this.turned });
		}
	}

	isSendable() {
		return this.view() === "marking" && this.isWhole() && !this.isSent();
	}

	isSent() {
		const newest = this.newest();
		return newest !== undefined && this.isSame(this.typed, newest);
	}

	/*
	 * "being-typed", "received", or, while it waits, "kept" once it lies on the disk, "being-kept" before and
	 * "unkept" where it cannot: exactly one is true of the card at hand.
	 */
	truth() {
		if (!this.isSent()) {
			return "being-typed";
		}
		return this.newest().state === "waiting" ? this.keeping() : "received";
	}

	keeping() {
		if (this.shelf.isKept("cards")) {
			return "kept";
		}
		return this.shelf.isLasting() ? "being-kept" : "unkept";
	}

	view() {
		if (this.contact === "seat-lost") {
			return "lost";
		}
		if (this.table === undefined) {
			return "starting";
		}
		return this.at() ? "marking" : "waiting";
	}

}
