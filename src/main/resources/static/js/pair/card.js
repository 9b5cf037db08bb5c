/* A card of two marks, in tenths. */
import { Card } from "../card/card.js";
import { NOTHING_TYPED, fromNumber, isComplete, isWhole, tenths } from "./typing.js";

export class PairCard extends Card {

	get kind() {
		return "pair";
	}

	nothing() {
		return NOTHING_TYPED;
	}

	asTyped(card) {
		return { first: fromNumber(card.first / 10), second: fromNumber(card.second / 10), at: "send" };
	}

	isAnything(typed) {
		return typed.first !== "" || typed.second !== "";
	}

	isSame(typed, card) {
		return isWhole(typed.first) && isWhole(typed.second) && tenths(typed.first) === card.first && tenths(typed.second) === card.second;
	}

	isWhole() {
		return isComplete(this.typed);
	}

	hasZero() {
		return this.isWhole() && (this.content().first === 0 || this.content().second === 0);
	}

	takesZero() {
		return this.table?.zeroMark !== "REFUSE";
	}

	content() {
		return { first: tenths(this.typed.first), second: tenths(this.typed.second) };
	}

	received() {
		return (this.table?.cards ?? []).map((card) => this.fromService(card));
	}

	fromService(card) {
		return { ...card, state: "received", first: tenths(fromNumber(card.first)), second: tenths(fromNumber(card.second)) };
	}

	/* The cards beside the one at hand. */
	others() {
		return this.received().filter((card) => card.performance !== this.turned);
	}

	inWords(typed) {
		return (typed.first || "–") + " / " + (typed.second || "–");
	}

}
