import { settled } from "./support/page.js";
import { Outbox } from "../../main/resources/static/js/card/outbox.js";
import assert from "node:assert/strict";
import { afterEach, beforeEach, mock, test } from "node:test";

const RECEIVED = { outcome: "received", receivedAt: "2026-11-29T10:00:00Z" };
const UNREACHABLE = { outcome: "unreachable" };

let shelf;
let told;
let answer;
let outbox;

beforeEach(() => {
	mock.timers.enable({ apis: ["setTimeout"] });
	shelf = shelfInMemory();
	told = [];
	answer = () => RECEIVED;
	outbox = loaded();
});

function shelfInMemory() {
	const kept = new Map();
	return {
		read: (name, otherwise) => (kept.has(name) ? JSON.parse(kept.get(name)) : otherwise),
		write: (name, value) => kept.set(name, JSON.stringify(value)),
	};
}

/* The page as it is after a reload. */
function loaded(onChange = () => {}) {
	return new Outbox(shelf, deliver, onChange);
}

function deliver(thing) {
	told.push(thing);
	return Promise.resolve(answer(thing));
}

const card = (id, more) => ({ kind: "pair", id, performance: "p1", sequence: 1, first: 56, second: 55, ...more });

const ids = (things) => things.map(({ id }) => id);

async function after(milliseconds) {
	mock.timers.tick(milliseconds);
	await settled();
}

afterEach(() => mock.timers.reset());

test("a card goes out once and is then received", async () => {
	outbox.put(card("a"));
	await settled();
	await outbox.flush();
	await after(60000);
	assert.deepEqual(ids(told), ["a"]);
	assert.equal(outbox.newestOf("p1").state, "received");
	assert.equal(outbox.newestOf("p1").receivedAt, RECEIVED.receivedAt);
});

test("without a network everything is kept, and a reload sends the very same card", async () => {
	answer = () => UNREACHABLE;
	outbox.put(card("a"));
	await settled();
	assert.deepEqual(ids(outbox.waitingCards()), ["a"]);

	mock.timers.reset();
	mock.timers.enable({ apis: ["setTimeout"] });
	answer = () => RECEIVED;
	const again = loaded();
	assert.deepEqual(ids(again.waitingCards()), ["a"]);
	await again.flush();
	assert.deepEqual(told[1], told[0]);
	assert.deepEqual(again.waiting(), []);
});

test("a card lies on the shelf before it is told", async () => {
	answer = () => {
		assert.equal(shelf.read("cards", [])[0].state, "waiting");
		return RECEIVED;
	};
	outbox.put(card("a"));
	await settled();
	assert.equal(shelf.read("cards", [])[0].state, "received");
});

test("what waits goes out in the order it was put in, one at a time", async () => {
	const open = [];
	answer = () => new Promise((resolve) => open.push(() => resolve(RECEIVED)));
	outbox.put(card("a"));
	outbox.put(card("b", { sequence: 2 }));
	outbox.put({ kind: "seen", id: "c", remark: "r1", performance: "p1" });
	outbox.flush();
	for (const expected of [["a"], ["a", "b"], ["a", "b", "c"]]) {
		await settled();
		assert.deepEqual(ids(told), expected);
		open.shift()();
	}
	await settled();
	assert.deepEqual(outbox.waiting(), []);
	assert.equal(told.length, 3);
});

test("what has no answer holds up what was put in after it", async () => {
	answer = () => UNREACHABLE;
	outbox.put(card("a"));
	await settled();
	outbox.put(card("b", { sequence: 2 }));
	await settled();
	assert.deepEqual(ids(told), ["a", "a"]);
	answer = () => RECEIVED;
	await after(15000);
	assert.deepEqual(ids(told), ["a", "a", "a", "b"]);
});

test("it is tried again ever more rarely, up to fifteen seconds, and soon again once there was an answer", async () => {
	answer = () => UNREACHABLE;
	outbox.put(card("a"));
	await settled();
	for (const wait of [1000, 2000, 4000, 8000, 15000, 15000]) {
		const before = told.length;
		await after(wait - 1);
		assert.equal(told.length, before, "too early, before " + wait);
		await after(1);
		assert.equal(told.length, before + 1, "too late, after " + wait);
	}
	assert.deepEqual(new Set(ids(told)), new Set(["a"]));
	answer = ({ id }) => (id === "a" ? RECEIVED : UNREACHABLE);
	await after(15000);
	outbox.put(card("b", { sequence: 2 }));
	await settled();
	const before = told.length;
	await after(1000);
	assert.equal(told.length, before + 1);
});

test("one thing more to tell does not make the tries more frequent", async () => {
	answer = () => UNREACHABLE;
	outbox.put(card("a"));
	await settled();
	await after(500);
	outbox.put(card("b", { sequence: 2 }));
	await settled();
	assert.equal(told.length, 2);
	await after(1999);
	assert.equal(told.length, 2);
	await after(1);
	assert.equal(told.length, 3);
});

test("a refused card holds nothing up and is told until the judge puts it away", async () => {
	answer = ({ id }) => (id === "a" ? { outcome: "refused", sentence: "Closed." } : RECEIVED);
	outbox.put(card("a"));
	outbox.put(card("b", { performance: "p2" }));
	await settled();
	assert.deepEqual(ids(told), ["a", "b"]);
	assert.deepEqual(outbox.refusals().map(({ id, sentence }) => [id, sentence]), [["a", "Closed."]]);
	assert.equal(outbox.newestOf("p1"), undefined);
	assert.equal(outbox.newestOf("p2").id, "b");
	outbox.putAway("a");
	assert.deepEqual(loaded().refusals(), []);
	await after(60000);
	assert.equal(told.length, 2);
});

test("a seat that was lost keeps its cards", async () => {
	answer = () => ({ outcome: "seat-lost" });
	outbox.put(card("a"));
	outbox.put(card("b", { sequence: 2 }));
	await settled();
	assert.deepEqual(new Set(ids(told)), new Set(["a"]));
	assert.deepEqual(ids(outbox.waitingCards()), ["a", "b"]);
});

test("a card that met another version waits for the judge, and is never sent again", async () => {
	const received = { sequence: 1, first: 5.0, second: 5.0 };
	answer = () => ({ outcome: "differs", sentence: "Another one is there.", received });
	outbox.put(card("a"));
	await settled();
	await after(60000);
	assert.deepEqual(ids(told), ["a"]);
	assert.deepEqual(loaded().differing().received, received);
	assert.equal(outbox.newestOf("p1"), undefined);
	outbox.settle("a");
	assert.equal(outbox.differing(), undefined);
	assert.deepEqual(outbox.waiting(), []);
});

test("what cannot be told at all is said, holds nothing else up and is tried again later", async (context) => {
	const said = context.mock.method(console, "error", () => {});
	answer = ({ id }) => {
		if (id === "a") {
			throw new Error("no such kind");
		}
		return RECEIVED;
	};
	outbox.put(card("a"));
	outbox.put(card("b", { sequence: 2 }));
	await settled();
	assert.deepEqual(ids(outbox.waiting()), ["a"]);
	assert.equal(said.mock.calls[0].arguments[0], "sending");
	answer = () => RECEIVED;
	await after(1000);
	assert.deepEqual(outbox.waiting(), []);
});

test("a page that cannot be drawn sends all the same, and says so", async (context) => {
	const said = context.mock.method(console, "error", () => {});
	outbox = loaded(() => {
		throw new Error("a part is missing");
	});
	outbox.put(card("a"));
	await settled();
	assert.deepEqual(ids(told), ["a"]);
	assert.deepEqual(outbox.waiting(), []);
	assert.equal(said.mock.calls[0].arguments[0], "drawing");
});

test("the newest version counts, whichever came first to the shelf", () => {
	answer = () => UNREACHABLE;
	outbox.learn(card("b", { sequence: 3 }));
	outbox.put(card("a", { sequence: 2 }));
	outbox.put(card("c", { sequence: 9, performance: "p2" }));
	assert.equal(outbox.newestOf("p1").id, "b");
	assert.equal(outbox.newestOf("p3"), undefined);
});

test("what was acknowledged and is gone at the service is offered again under its identity, once", async () => {
	outbox.put(card("a"));
	await settled();
	const known = outbox.receivedIds();
	outbox.offerAgain("p1", 0, known);
	await settled();
	assert.deepEqual(ids(told), ["a", "a"]);
	assert.equal(outbox.newestOf("p1").state, "received");

	outbox.offerAgain("p1", 0, known);
	await settled();
	assert.equal(told.length, 2);
	assert.equal(outbox.newestOf("p1"), undefined);
	assert.equal(outbox.setAside("p1"), 1);
	assert.equal(outbox.setAside("p2"), 0);
});

test("what the service has, or was acknowledged only since, is not offered again", async () => {
	outbox.put(card("a"));
	await settled();
	outbox.offerAgain("p1", 0, new Set());
	outbox.offerAgain("p1", 1, outbox.receivedIds());
	outbox.offerAgain("p2", 0, outbox.receivedIds());
	await settled();
	assert.deepEqual(ids(told), ["a"]);
});

test("a remark that was seen is no card", async () => {
	answer = () => UNREACHABLE;
	outbox.put({ kind: "seen", id: "s", remark: "r1", performance: "p1" });
	await settled();
	assert.equal(outbox.hasSeen("r1"), true);
	assert.equal(outbox.hasSeen("r2"), false);
	assert.deepEqual(outbox.waitingCards(), []);
	assert.deepEqual(ids(outbox.waiting()), ["s"]);
});

/* A card that the first life of the service has acknowledged. */
async function acknowledged(...cards) {
	answer = () => ({ ...RECEIVED, life: "life-1" });
	cards.forEach((one) => outbox.put(one));
	await settled();
	told.length = 0;
	answer = () => ({ ...RECEIVED, life: "life-2" });
}

test("what an earlier life of the service acknowledged is brought back with its first receipt", async () => {
	await acknowledged(card("a"), card("b", { sequence: 2 }), card("c", { performance: "p2" }));
	outbox.bringBack(["life-2", "life-1"], () => false);
	await settled();
	assert.deepEqual(ids(told), ["a", "b", "c"]);
	assert.deepEqual(told[0].returned, { life: "life-1", receivedAt: RECEIVED.receivedAt });
	outbox.bringBack(["life-2", "life-1"], () => false);
	await settled();
	assert.equal(told.length, 3, "once");
	assert.deepEqual(new Set(outbox.cards().map(({ state, life }) => state + " " + life)), new Set(["received life-2"]));
});

test("what the service shows that it has is not brought back", async () => {
	await acknowledged(card("a"), card("c", { performance: "p2" }));
	outbox.bringBack(["life-2", "life-1"], ({ performance }) => performance === "p1");
	await settled();
	assert.deepEqual(ids(told), ["c"]);
});

test("a card of another day stays where it is", async () => {
	await acknowledged(card("a"));
	outbox.bringBack(["life-9"], () => false);
	outbox.bringBack(["life-9", "life-8"], () => false);
	outbox.bringBack(["life-1"], () => false);
	outbox.bringBack([], () => false);
	await settled();
	assert.deepEqual(told, []);
});

test("a version that was learnt keeps of which service it is", async () => {
	outbox.life = "life-1";
	outbox.learn(card("a", { receivedAt: RECEIVED.receivedAt }));
	outbox.offerAgain("p1", 0, outbox.receivedIds());
	await settled();
	assert.deepEqual(told.map(({ id, life }) => id + " " + life), ["a life-1"], "which any other refuses");
});

test("a service that goes back a second time gets everything once more", async () => {
	await acknowledged(card("a"));
	outbox.bringBack(["life-2", "life-1"], () => false);
	await settled();
	answer = () => ({ ...RECEIVED, life: "life-3" });
	outbox.bringBack(["life-3", "life-2", "life-1"], () => false);
	outbox.offerAgain("p1", 0, outbox.receivedIds());
	await settled();
	assert.deepEqual(ids(told), ["a", "a"]);
	assert.equal(told[1].returned.life, "life-2");
	assert.equal(outbox.newestOf("p1").state, "received");
});

test("without contact what comes back waits like any card", async () => {
	await acknowledged(card("a"));
	answer = () => UNREACHABLE;
	outbox.bringBack(["life-2", "life-1"], () => false);
	await settled();
	assert.deepEqual(ids(outbox.waitingCards()), ["a"]);
	answer = () => ({ ...RECEIVED, life: "life-2" });
	await after(1000);
	assert.deepEqual(outbox.waiting(), []);
	assert.deepEqual(told.at(-1).returned, { life: "life-1", receivedAt: RECEIVED.receivedAt });
});

test("a card of the moment in which the service died waits until its team is called again", async () => {
	outbox.life = "life-1";
	answer = () => UNREACHABLE;
	outbox.put(card("a"));
	outbox.put(card("b", { performance: "p2" }));
	await settled();
	answer = ({ id }) => (id === "a" ? { outcome: "too-early", sentence: "waits" } : { ...RECEIVED, life: "life-2" });
	await after(1000);
	assert.deepEqual(outbox.cards().map(({ state, life }) => state + " " + life), ["waiting life-1", "received life-2"]);
	told.length = 0;
	outbox.nowOpen(["p3"], []);
	await settled();
	assert.deepEqual(told, []);
	answer = () => ({ ...RECEIVED, life: "life-2" });
	outbox.nowOpen(["p1"], []);
	await settled();
	assert.deepEqual(ids(told), ["a"]);
	assert.equal(outbox.newestOf("p1").state, "received");
});

test("a card is never too early for a team that was ended without marks", async () => {
	answer = () => ({ outcome: "too-early", sentence: "withdrawn" });
	outbox.put(card("a"));
	await settled();
	assert.deepEqual(ids(outbox.waiting()), ["a"]);
	outbox.nowOpen([], ["p1"]);
	await settled();
	assert.deepEqual(outbox.refusals().map(({ sentence }) => sentence), ["withdrawn"]);
});
