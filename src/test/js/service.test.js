/* What goes to the service, and by which words it can tell that it was meant for another. */
import assert from "node:assert/strict";
import { afterEach, beforeEach, test } from "node:test";
import { deliver, tellAgain } from "../../main/resources/static/js/card/service.js";

const THERE = { performance: "p1", sequence: 1, first: 56, second: 55 };

let asked;
let answer;

beforeEach(() => {
	asked = [];
	answer = { status: 200, body: { receivedAt: "2027-02-13T14:00:00Z" } };
	globalThis.fetch = (path, request) => {
		asked.push({ path, ...request });
		return Promise.resolve({ status: answer.status, headers: new Headers({ "Rimebook-Life": "life-9" }), json: () => Promise.resolve(answer.body) });
	};
});

afterEach(() => delete globalThis.fetch);

test("each thing names the life of the service for which it was put down", async () => {
	await deliver({ kind: "pair", id: "a", ...THERE, life: "life-1" });
	await deliver({ kind: "seen", id: "s", remark: "r1", life: "life-1" });
	assert.deepEqual(asked.map(({ path, headers }) => path + " " + headers["Rimebook-Life"]), ["/api/cards/a life-1", "/api/judge/remarks/r1/seen life-1"]);
});

test("what was put down before the service was heard names none", async () => {
	assert.equal((await deliver({ kind: "pair", id: "a", ...THERE })).outcome, "received");
	assert.equal("Rimebook-Life" in asked[0].headers, false);
});

test("the refusal of another service is final and said in its words", async () => {
	answer = { status: 409, body: { code: "card-of-another-day", detail: "It is not taken here." } };
	assert.deepEqual(await deliver({ kind: "pair", id: "a", ...THERE, life: "life-1" }), { outcome: "refused", sentence: "It is not taken here." });
});

test("what hangs at a service that died is told once more as soon as another answers", async () => {
	const one = globalThis.fetch;
	let fail;
	globalThis.fetch = () => {
		globalThis.fetch = one;
		return new Promise((never, reject) => (fail = reject));
	};
	const told = deliver({ kind: "pair", id: "a", ...THERE });
	tellAgain();
	assert.equal((await told).outcome, "received");
	fail(new Error("reset"));
	tellAgain();
	assert.deepEqual(asked.map(({ path }) => path), ["/api/cards/a"], "once more, and not again once it was answered");
});
