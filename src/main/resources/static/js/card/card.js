/*
 * What this tablet knows of the card at hand: the service's table, the marks being typed, and which
 * version of the card counts. Nothing here touches the page.
 */
import { NOTHING_TYPED, fromNumber, isComplete, isWhole, tenths } from "./typing.js";

export class Card {

	constructor(shelf, outbox, newId) {
		this.shelf = shelf;
		this.outbox = outbox;
		this.newId = newId;
		this.table = undefined;
		this.typed = NOTHING_TYPED;
		this.refusal = undefined;
		this.contact = "good";
	}

	/* Take the service's table. Only another performance on the ice changes what is typed. */
	take(table) {
		const before = this.table ? this.table.now : this.shelf.read("now", null);
		const isFirst = this.table === undefined;
		this.table = table;
		if (isFirst || before?.performance !== table.now?.performance) {
			this.leave(before);
			this.turnTo(table.now);
		}
	}

	leave(before) {
		if (before && before.performance !== this.table.now?.performance) {
			this.noteUnsent(before, this.shelf.read("typed/" + before.performance, NOTHING_TYPED));
		}
	}

	turnTo(now) {
		this.shelf.write("now", now);
		this.typed = this.kept(now);
		this.refusal = undefined;
	}

	/* What was typed on this tablet, else the card that counts, else nothing. */
	kept(now) {
		if (!now) {
			return NOTHING_TYPED;
		}
		return this.shelf.read("typed/" + now.performance, null) ?? asTyped(this.newestOf(now.performance));
	}

	type(typed, refusal) {
		this.typed = typed;
		this.refusal = refusal;
		this.shelf.write("typed/" + this.table.now.performance, typed);
	}

	/* A change that was still being typed when the referee closed the cards is told, not dropped in silence. */
	noteUnsent(now, typed) {
		const newest = this.newestOf(now.performance);
		if (newest && (typed.first !== "" || typed.second !== "") && !isSame(typed, newest) && !this.wasRefused(now, typed)) {
			this.shelf.write("unsent", { startNumber: now.startNumber, typed, newest });
		}
	}

	/* What was sent and refused is told with its reason already. */
	wasRefused({ performance }, typed) {
		return this.outbox.cards().some((card) => card.performance === performance && card.state === "refused" && isSame(typed, card));
	}

	unsent() {
		return this.shelf.read("unsent", null);
	}

	putAway(id) {
		return id === "unsent" ? this.shelf.remove("unsent") : this.outbox.putAway(id);
	}

	send() {
		const { performance, startNumber, team } = this.table.now;
		const sequence = 1 + (this.newestOf(performance)?.sequence ?? 0);
		this.outbox.put({ id: this.newId(), performance, startNumber, team, sequence, ...this.marks() });
	}

	/* The version of a card that counts: on this tablet or at the service, whichever is later. */
	newestOf(performance) {
		const here = this.outbox.newestOf(performance);
		const there = this.received().find((card) => card.performance === performance);
		return here && !(there && there.sequence >= here.sequence) ? here : there;
	}

	/* The service's cards of this seat, marks in tenths. */
	received() {
		return (this.table?.cards ?? []).map((card) => ({ ...card, state: "received",
			first: tenths(fromNumber(card.first)), second: tenths(fromNumber(card.second)) }));
	}

	/* The cards beside, and the one at hand as it would be. */
	others() {
		return this.received().filter((card) => card.performance !== this.table.now?.performance);
	}

	newest() {
		return this.table?.now ? this.newestOf(this.table.now.performance) : undefined;
	}

	marks() {
		return { first: tenths(this.typed.first), second: tenths(this.typed.second) };
	}

	hasMarks() {
		return isComplete(this.typed);
	}

	hasZero() {
		return this.hasMarks() && (this.marks().first === 0 || this.marks().second === 0);
	}

	isSendable() {
		return this.view() === "marking" && this.hasMarks() && !this.isSent();
	}

	isSent() {
		const newest = this.newest();
		return newest !== undefined && isSame(this.typed, newest);
	}

	/* "being-typed", "kept" or "received": exactly one is true of the card at hand. */
	truth() {
		if (!this.isSent()) {
			return "being-typed";
		}
		return this.newest().state === "waiting" ? "kept" : "received";
	}

	view() {
		if (this.contact === "seat-lost") {
			return "lost";
		}
		if (this.table === undefined) {
			return "starting";
		}
		return this.table.now ? "marking" : "waiting";
	}

}

function asTyped(card) {
	return card ? { first: fromNumber(card.first / 10), second: fromNumber(card.second / 10), at: "send" } : NOTHING_TYPED;
}

function isSame(typed, card) {
	return isWhole(typed.first) && isWhole(typed.second) && tenths(typed.first) === card.first && tenths(typed.second) === card.second;
}
