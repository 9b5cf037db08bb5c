import { settled } from "./support/page.js";
import { Outbox } from "../../main/resources/static/js/card/outbox.js";
import { PairCard } from "../../main/resources/static/js/pair/card.js";
import { PointsCard } from "../../main/resources/static/js/points/card.js";
import assert from "node:assert/strict";
import { beforeEach, test } from "node:test";

const OF_ANOTHER_DAY = { kind: "pair", id: "then", performance: "p1", sequence: 1, startNumber: 7, team: "A", first: 31, second: 32, life: "another" };
const REFUSED = { outcome: "refused", sentence: "on another day" };
const NOW = { performance: "p1", startNumber: 2, team: "B" };

let kept;
let ids;
let answers;

beforeEach(() => {
	kept = new Map();
	ids = 0;
	answers = [];
});

const shelf = {
	read: (name, otherwise) => (kept.has(name) ? JSON.parse(kept.get(name)) : otherwise),
	write: (name, value) => kept.set(name, JSON.stringify(value)),
	remove: (name) => kept.delete(name),
	isKept: () => true,
	isLasting: () => true,
};

/* The page after a reload, whose deliveries are answered by hand. */
function loaded(Kind = PairCard) {
	const outbox = new Outbox(shelf, () => new Promise((resolve) => answers.push(resolve)), () => {});
	return new Kind(shelf, outbox, () => "id" + ++ids);
}

function hear(card, more) {
	card.hear({ now: NOW, cards: [], ...more }, card.outbox.receivedIds(), ["today"]);
}

async function answer(given) {
	await settled();
	answers.shift()(given);
	await settled();
}

const received = (sequence, first, second) => ({ performance: "p1", sequence, first, second, receivedAt: "2027-02-06T14:00:00Z" });

const marks = ({ typed: { first, second } }) => [first, second];

for (const state of ["waiting", "received"]) {
	test(`a card of another day that was ${state} leaves nothing on this day's card`, async () => {
		kept.set("cards", JSON.stringify([{ ...OF_ANOTHER_DAY, state }]));
		const card = loaded();
		hear(card);
		card.outbox.flush();
		await answer(REFUSED);
		assert.deepEqual(marks(card), ["", ""]);
		assert.equal(card.truth(), "being-typed");
		assert.deepEqual(card.outbox.refusals().map(({ first }) => first), [31]);
	});
}

test("nor where it is refused before the first look is answered", async () => {
	kept.set("cards", JSON.stringify([{ ...OF_ANOTHER_DAY, state: "waiting" }]));
	const card = loaded();
	card.outbox.flush();
	await answer(REFUSED);
	hear(card);
	assert.deepEqual(marks(card), ["", ""]);
});

test("what a judge typed stays before the judge when it is refused", async () => {
	const card = loaded();
	hear(card);
	card.type({ first: "5.6", second: "5.7", at: "send" });
	card.send();
	await answer(REFUSED);
	assert.deepEqual(marks(card), ["5.6", "5.7"]);
	assert.equal(card.truth(), "being-typed");
});

test("what nobody typed here follows a change from the seat's other tablet", () => {
	const card = loaded();
	hear(card, { cards: [received(1, 5.6, 5.7)] });
	assert.deepEqual(marks(card), ["5.6", "5.7"]);
	hear(card, { cards: [received(2, 5.8, 5.7)] });
	assert.deepEqual(marks(card), ["5.8", "5.7"]);
	assert.equal(card.truth(), "received");
});

test("what was typed here stays whatever the seat's other tablet sends", () => {
	const card = loaded();
	hear(card);
	card.type({ first: "5.6", second: "", at: "second" });
	hear(card, { cards: [received(1, 4.1, 4.2)] });
	assert.deepEqual(marks(card), ["5.6", ""]);
});

test("a card in points that is refused leaves no grades behind either", async () => {
	const element = { id: "e1", number: 1, code: "I", element: "i", state: "called" };
	kept.set("cards", JSON.stringify([{ kind: "points", id: "then", performance: "p1", sequence: 1, startNumber: 7, team: "A", state: "waiting", listSequence: 1, grades: { e1: 3 }, called: { e1: { element: "i", code: "I", number: 1 } }, components: { skating: "7.25" } }]));
	const card = loaded(PointsCard);
	card.outbox.flush();
	hear(card, { points: { listSequence: 1, elements: [element], takenOut: [], components: ["skating"], lowestGrade: -5, highestGrade: 5, card: null } });
	assert.equal(card.isAnything(card.typed), true);
	await answer(REFUSED);
	assert.equal(card.isAnything(card.typed), false);
	assert.equal(card.typed.component, "skating");
});
