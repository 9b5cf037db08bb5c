import { compare, equalTotals, placeAmong, ranked, total } from "../../main/resources/static/js/pair/order.js";
import assert from "node:assert/strict";
import { test } from "node:test";

const card = (startNumber, first, second) => ({ startNumber, first, second });

const places = (cards, secondLook) => ranked(cards, secondLook).map(({ card: { startNumber }, place }) => [startNumber, place]);

test("the higher total comes first", () => {
	assert.equal(total(card(1, 56, 55)), 111);
	assert.deepEqual(places([card(1, 50, 50), card(2, 56, 55), card(3, 52, 51)], "SECOND_MARK"), [[2, 1], [3, 2], [1, 3]]);
});

test("totals are compared as numbers, not as text", () => {
	assert.deepEqual(places([card(1, 5, 4), card(2, 50, 50)], "SECOND_MARK"), [[2, 1], [1, 2]]);
});

test("equal totals are told apart by the mark that takes the second look", () => {
	const cards = [card(1, 56, 54), card(2, 54, 56)];
	assert.deepEqual(places(cards, "SECOND_MARK"), [[2, 1], [1, 2]]);
	assert.deepEqual(places(cards, "FIRST_MARK"), [[1, 1], [2, 2]]);
});

test("level cards share the better place, in the order they skated, and the next place stays empty", () => {
	const cards = [card(4, 40, 40), card(3, 55, 55), card(2, 55, 55), card(1, 60, 60)];
	assert.deepEqual(places(cards, "SECOND_MARK"), [[1, 1], [2, 2], [3, 2], [4, 4]]);
});

test("a card takes the place it would have among the others", () => {
	const others = [card(1, 60, 60), card(2, 50, 50)];
	assert.equal(placeAmong(card(3, 55, 55), others, "SECOND_MARK"), 2);
	assert.equal(placeAmong(card(3, 50, 50), others, "SECOND_MARK"), 2);
	assert.equal(placeAmong(card(3, 30, 30), others, "SECOND_MARK"), 3);
	assert.equal(placeAmong(card(3, 30, 30), [], "SECOND_MARK"), 1);
});

test("of two cards the one that is behind compares as greater, either way round", () => {
	const [ahead, behind] = [card(1, 54, 56), card(2, 56, 54)];
	assert.ok(compare(ahead, behind, "SECOND_MARK") < 0);
	assert.ok(compare(behind, ahead, "SECOND_MARK") > 0);
	assert.equal(compare(ahead, { ...ahead }, "SECOND_MARK"), 0);
});

test("only cards with the same total are named, each with its side", () => {
	const others = [card(1, 56, 54), card(2, 54, 56), card(3, 55, 55), card(4, 60, 60)];
	const sides = (secondLook) => equalTotals(card(9, 55, 55), others, secondLook).map(({ other, side }) => [other.startNumber, side]);
	assert.deepEqual(sides("SECOND_MARK"), [[1, "ahead"], [2, "behind"], [3, "level"]]);
	assert.deepEqual(sides("FIRST_MARK"), [[1, "behind"], [2, "ahead"], [3, "level"]]);
	assert.equal(equalTotals(card(9, 56, 54), [card(1, 55, 55)], "SECOND_MARK")[0].side, "behind");
});

test("sorting leaves the cards as they were given", () => {
	const cards = [card(1, 50, 50), card(2, 56, 55)];
	ranked(cards, "SECOND_MARK");
	assert.deepEqual(cards.map(({ startNumber }) => startNumber), [1, 2]);
});
