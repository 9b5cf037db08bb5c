import { settled, storage } from "./support/page.js";
import { Kept } from "../../main/resources/static/js/technical/kept.js";
import { Transport } from "../../main/resources/static/js/technical/transport.js";
import assert from "node:assert/strict";
import { afterEach, beforeEach, mock, test } from "node:test";

const PATH = "/desk/technical/s1";

let answer;
let asked;
let page;
let transport;

beforeEach(() => {
	mock.timers.enable({ apis: ["setTimeout", "Date"] });
	globalThis.sessionStorage = storage();
	asked = [];
	answer = () => ({ status: 200, html: "<p>list</p>" });
	mock.method(globalThis, "fetch", fetched);
	page = pageShowing("3");
	transport = loaded();
});

afterEach(() => {
	mock.timers.reset();
	mock.restoreAll();
});

async function fetched(address, { method, body } = {}) {
	const request = { address, method, fields: Object.fromEntries(body ?? []) };
	asked.push(request);
	const { status, html = "", type = "basic" } = await answer(request);
	return { status, type, ok: status >= 200 && status < 300, text: () => Promise.resolve(html) };
}

/* A page that writes down what it is told. */
function pageShowing(sequence) {
	const told = { shown: [], refused: [], failed: [], waiting: [], contact: [], signIns: 0, sequence };
	return {
		told,
		prints: () => [["called", "print-" + told.sequence]],
		token: () => "token",
		sequenceOf: () => told.sequence,
		show: (html) => told.shown.push(html),
		answered(html, refused) {
			told.shown.push(html);
			told.refused.push(...refused);
		},
		failed: (acts) => told.failed.push(...acts),
		waiting: (number) => told.waiting.push(number),
		contact: (isThere) => told.contact.push(isThere),
		signIn: () => told.signIns++,
	};
}

/* The page as it is after a reload. */
function loaded(who = "anna") {
	return new Transport(PATH, new Kept(PATH, who), page);
}

const call = (code) => ({ list: "called", to: "/list", performance: "p1", fields: [["act", "CALL"], ["value", code]], words: "Call " + code });

const sent = () => asked.filter(({ method }) => method === "POST");

const codes = () => sent().map(({ fields }) => fields.value);

const gone = () => Promise.reject(new TypeError("no network"));

/* What a browser would write to its console, and the test's runner would take for the end of the test. */
async function faultsWhile(act) {
	const faults = [];
	const others = process.listeners("unhandledRejection");
	process.removeAllListeners("unhandledRejection");
	process.on("unhandledRejection", ({ message }) => faults.push(message));
	act();
	await settled();
	process.removeAllListeners("unhandledRejection");
	others.forEach((other) => process.on("unhandledRejection", other));
	return faults;
}

async function after(milliseconds) {
	mock.timers.tick(milliseconds);
	await settled();
}

test("an act goes out at once with the version that was seen, and its answer is shown", async () => {
	transport.add(call("ME4"));
	await settled();
	assert.deepEqual(sent(), [{
		address: PATH + "/list",
		method: "POST",
		fields: { performance: "p1", sequence: "3", act: "CALL", value: "ME4", called: "print-3", _csrf: "token" },
	}]);
	assert.deepEqual(page.told.shown, ["<p>list</p>"]);
	assert.deepEqual(page.told.waiting, [1, 0]);
	assert.equal(transport.busy, false);
});

test("acts go out one after the other, each resting on the list that the one before brought", async () => {
	const open = [];
	answer = () => new Promise((resolve) => open.push(resolve));
	transport.add(call("ME4"));
	transport.add(call("AC2"));
	await settled();
	assert.deepEqual(codes(), ["ME4"]);
	page.told.sequence = "4";
	open.shift()({ status: 200 });
	await settled();
	assert.deepEqual(sent().map(({ fields }) => [fields.value, fields.sequence]), [["ME4", "3"], ["AC2", "4"]]);
});

test("an act without an answer is sent again as it was, so that the service does it once", async () => {
	answer = gone;
	transport.add(call("ME4"));
	await settled();
	page.told.sequence = "4";
	answer = () => ({ status: 500 });
	await after(1000);
	answer = () => ({ status: 200 });
	await after(1000);
	await after(60000);
	assert.deepEqual(sent().map(({ fields }) => [fields.value, fields.sequence]), [["ME4", "3"], ["ME4", "3"], ["ME4", "3"]]);
	assert.equal(transport.busy, false);
});

test("without a network acts wait in their order through a reload, and go out under the versions they had", async () => {
	answer = gone;
	transport.add(call("ME4"));
	transport.add(call("AC2"));
	await settled();
	mock.timers.reset();
	mock.timers.enable({ apis: ["setTimeout", "Date"] });
	page = pageShowing("7");
	answer = () => ({ status: 200 });
	const again = loaded();
	assert.equal(again.busy, true);
	again.resume();
	await settled();
	assert.deepEqual(sent().slice(1).map(({ fields }) => [fields.value, fields.sequence]), [["ME4", "3"], ["AC2", "7"]]);
	assert.equal(loaded().busy, false);
});

test("an act that was on its way when the page was left goes out again under its version", async () => {
	answer = () => new Promise(() => {});
	transport.add(call("ME4"));
	await settled();
	page = pageShowing("4");
	loaded().resume();
	await settled();
	assert.deepEqual(sent().map(({ fields }) => [fields.value, fields.sequence]), [["ME4", "3"], ["ME4", "3"]]);
});

test("nobody else sends what somebody called", async () => {
	answer = gone;
	transport.add(call("ME4"));
	await settled();
	assert.equal(loaded("berta").busy, false);
	assert.equal(loaded("anna").busy, true);
});

test("what was called at one desk waits for that desk", async () => {
	answer = gone;
	transport.add(call("ME4"));
	await settled();
	assert.equal(new Transport("/desk/technical/s2", new Kept("/desk/technical/s2", "anna"), page).busy, false);
});

test("what is kept and cannot be read is nothing", () => {
	sessionStorage.setItem("technical " + PATH + " anna", "[{");
	assert.equal(loaded().busy, false);
});

test("a browser that keeps nothing sends all the same", async () => {
	globalThis.sessionStorage = {
		getItem() {
			throw new Error("not allowed");
		},
		setItem() {
			throw new Error("full");
		},
		removeItem() {
			throw new Error("not allowed");
		},
	};
	const own = loaded();
	own.add(call("ME4"));
	await settled();
	assert.deepEqual(codes(), ["ME4"]);
});

test("who is signed out signs in again; the act is kept and nothing more goes out", async () => {
	for (const signedOut of [{ status: 401 }, { status: 403 }, { status: 0, type: "opaqueredirect" }]) {
		sessionStorage.removeItem("technical " + PATH + " anna");
		asked = [];
		page = pageShowing("3");
		answer = () => signedOut;
		const own = loaded();
		own.add(call("ME4"));
		await settled();
		own.add(call("AC2"));
		await after(60000);
		assert.deepEqual(codes(), ["ME4"]);
		assert.equal(page.told.signIns, 1);
		assert.deepEqual(page.told.shown, []);
		assert.equal(loaded().busy, true);
	}
});

test("a refused act takes back what was called behind it on the older list, to be decided together", async () => {
	for (const status of [409, 422]) {
		page = pageShowing("3");
		asked = [];
		answer = () => ({ status, html: "<p>refused</p>" });
		const own = loaded();
		own.add(call("ME4"));
		own.add(call("AC2"));
		await settled();
		assert.deepEqual(codes(), ["ME4"]);
		assert.deepEqual(page.told.refused.map(({ words }) => words), ["Call ME4", "Call AC2"]);
		assert.deepEqual(page.told.shown, ["<p>refused</p>"]);
		assert.equal(own.busy, false);
	}
});

test("any other answer than the list says plainly that nothing of it was done, and is not asked for again", async () => {
	for (const status of [400, 404, 405, 413, 429]) {
		page = pageShowing("3");
		asked = [];
		answer = () => ({ status, html: "<p>error page</p>" });
		const own = loaded();
		own.add(call("ME4"));
		own.add(call("AC2"));
		await after(60000);
		assert.deepEqual(codes(), ["ME4"]);
		assert.deepEqual(page.told.failed.map(({ words }) => words), ["Call ME4", "Call AC2"]);
		assert.deepEqual(page.told.shown, []);
		assert.equal(own.busy, false);
		assert.equal(loaded().busy, false);
	}
});

test("what was refused and is done again rests on the list as it is now", async () => {
	answer = () => ({ status: 409 });
	transport.add(call("ME4"));
	await settled();
	page.told.sequence = "5";
	answer = () => ({ status: 200 });
	transport.addAgain(page.told.refused);
	await settled();
	assert.deepEqual(sent().map(({ fields }) => fields.sequence), ["3", "5"]);
});

test("a fault while an answer is shown does not keep the next act from going out", async () => {
	page.answered = () => {
		page.answered = () => {};
		throw new Error("a part is missing");
	};
	const faults = await faultsWhile(() => transport.add(call("ME4")));
	assert.deepEqual(faults, ["a part is missing"]);
	transport.add(call("AC2"));
	await settled();
	assert.deepEqual(codes(), ["ME4", "ME4", "AC2"]);
});

test("the page follows once a second, saying what it shows", async () => {
	transport.follow();
	await after(999);
	assert.equal(asked.length, 0);
	await after(1);
	await after(1000);
	assert.deepEqual(asked.map(({ address }) => address), Array(2).fill(PATH + "/live?called=print-3"));
	assert.deepEqual(page.told.shown, ["<p>list</p>", "<p>list</p>"]);
});

test("a look that found nothing new shows nothing", async () => {
	answer = () => ({ status: 204 });
	transport.follow();
	await after(1000);
	assert.deepEqual(page.told.shown, []);
	assert.deepEqual(page.told.contact, [true]);
});

test("a look that was overtaken by an act is not shown: it is older than the answer", async () => {
	const looks = [];
	answer = ({ method }) => (method ? { status: 200, html: "newer" } : new Promise((resolve) => looks.push(resolve)));
	transport.follow();
	await after(1000);
	transport.add(call("ME4"));
	await settled();
	looks[0]({ status: 200, html: "older" });
	await settled();
	assert.deepEqual(page.told.shown, ["newer"]);
});

test("nothing that is looked for is shown while an act waits", async () => {
	answer = ({ method }) => (method ? gone() : { status: 200, html: "looked" });
	transport.add(call("ME4"));
	transport.follow();
	await settled();
	await after(1000);
	assert.deepEqual(page.told.shown, []);
});

test("contact is there as long as looks are answered, whatever they find", async () => {
	answer = () => ({ status: 204 });
	transport.follow();
	for (let second = 1; second <= 10; second++) {
		await after(1000);
	}
	assert.deepEqual(new Set(page.told.contact), new Set([true]));
	assert.equal(page.told.contact.length, 10);
});

test("contact is said to be lost after five seconds of silence, and back with the first answer", async () => {
	answer = gone;
	transport.follow();
	for (let second = 1; second <= 5; second++) {
		await after(1000);
	}
	assert.deepEqual(page.told.contact, [true, true, true, true, false]);
	answer = ({ method }) => (method ? { status: 200 } : gone());
	transport.add(call("ME4"));
	await settled();
	await after(1000);
	assert.equal(page.told.contact.at(-1), true);
});
