/*
 * One judge's cards in order: the higher total first, equal totals by the mark that takes the second
 * look, level where that is equal too. Cards are { first, second } in tenths.
 */

export function total(card) {
	return card.first + card.second;
}

export function compare(a, b, secondLook) {
	return total(b) - total(a) || deciding(b, secondLook) - deciding(a, secondLook);
}

function deciding(card, secondLook) {
	return secondLook === "FIRST_MARK" ? card.first : card.second;
}

/* The cards in order, each with its place; level cards share the better one. */
export function ranked(cards, secondLook) {
	return cards
		.map((card) => ({ card, place: placeAmong(card, cards, secondLook) }))
		.sort((a, b) => a.place - b.place || a.card.startNumber - b.card.startNumber);
}

export function placeAmong(card, cards, secondLook) {
	return 1 + cards.filter((other) => compare(other, card, secondLook) < 0).length;
}

/* The other cards with the same total, and on which side of them the second look puts this one. */
export function equalTotals(card, others, secondLook) {
	return others
		.filter((other) => total(other) === total(card))
		.map((other) => ({ other, side: side(compare(card, other, secondLook)) }));
}

function side(compared) {
	return compared === 0 ? "level" : compared < 0 ? "ahead" : "behind";
}
