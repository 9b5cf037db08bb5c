/* How often a tablet looks at the service, and when it says that it has no contact. */
import { settled } from "./support/page.js";
import { keepLooking } from "../../main/resources/static/js/card/look.js";
import assert from "node:assert/strict";
import { afterEach, beforeEach, mock, test } from "node:test";

const EVERY = 1500;
const TABLE = { status: 200, headers: new Headers({ "Rimebook-Life": "life-1" }), json: () => Promise.resolve({ now: null }) };

let looks;
let isAway;
let flushed;
let heard;
let card;
let outbox;

beforeEach(async () => {
	mock.timers.enable({ apis: ["setTimeout", "setInterval", "Date"] });
	looks = 0;
	isAway = false;
	flushed = 0;
	heard = 0;
	globalThis.document.addEventListener = () => {};
	globalThis.fetch = () => {
		looks++;
		return isAway ? Promise.reject(new TypeError("refused")) : Promise.resolve(TABLE);
	};
	card = { contact: "starting", shelf: {}, hear: () => heard++, recall() {} };
	outbox = { flush: () => flushed++, receivedIds: () => new Set(), waitingCards: () => [] };
	keepLooking(card, outbox, () => EVERY, () => {});
	await settled();
});

afterEach(() => {
	mock.timers.reset();
	delete globalThis.fetch;
	delete globalThis.document.addEventListener;
});

async function after(milliseconds) {
	mock.timers.tick(milliseconds);
	await settled();
}

test("it looks again and again while the service answers", async () => {
	for (let look = 2; look < 6; look++) {
		await after(EVERY);
		assert.equal(looks, look);
	}
	assert.equal(card.contact, "good");
});

test("without an answer the looks become rarer, but none is more than five seconds after the last", async () => {
	isAway = true;
	await after(EVERY);
	for (const wait of [2 * EVERY, 5000, 5000, 5000, 5000, 5000]) {
		const before = looks;
		await after(wait - 1);
		assert.equal(looks, before, "too early, before " + wait);
		await after(1);
		assert.equal(looks, before + 1, "too late, after " + wait);
	}
	assert.equal(card.contact, "none");
});

test("a service that was away for an hour is heard within five seconds, and what waits goes out at once", async () => {
	isAway = true;
	for (let second = 0; second < 3600; second += 5) {
		await after(5000);
	}
	const before = { heard, flushed };
	isAway = false;
	await after(5000);
	assert.equal(card.contact, "good");
	assert.deepEqual({ heard, flushed }, { heard: before.heard + 1, flushed: before.flushed + 1 });
	await after(EVERY);
	assert.equal(heard, before.heard + 2);
});

test("an outbox that cannot be read ends no looking, and the service hears of the fault", async () => {
	const asked = [];
	const answering = globalThis.fetch;
	globalThis.fetch = (path) => {
		asked.push(path);
		return answering(path);
	};
	outbox.receivedIds = () => {
		throw new TypeError("what is kept is no list");
	};
	const before = looks;
	for (let look = 1; look < 4; look++) {
		await after(EVERY);
		assert.equal(looks, before + look);
	}
	assert.match(asked.at(-1), /fault=true/);
	assert.equal(card.contact, "good");
	assert.equal(heard, looks);
	outbox.receivedIds = () => new Set();
	await after(EVERY);
	await after(EVERY);
	assert.doesNotMatch(asked.at(-1), /fault/);
});
