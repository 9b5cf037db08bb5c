import assert from "node:assert/strict";
import { test } from "node:test";
import { Loaded } from "../../main/resources/static/js/music/loaded.js";
import { after, before, first, time } from "../../main/resources/static/js/music/order.js";
import { others, Played } from "../../main/resources/static/js/music/played.js";

function disk(full = false) {
	const kept = new Map();
	return {
		getItem: (key) => kept.get(key) ?? null,
		setItem: (key, value) => {
			if (full) {
				throw new Error("full");
			}
			kept.set(key, value);
		}
	};
}

const nothing = () => undefined;

test("what was played waits until the service has it, and is told in order, each once", async () => {
	const told = [];
	let reachable = false;
	const where = disk();
	const tell = ({ id }) => {
		if (!reachable) {
			return Promise.reject(new TypeError("no network"));
		}
		told.push(id);
		return Promise.resolve("noted");
	};
	const played = new Played(where, "segment", tell, nothing);
	await played.put({ id: "1" });
	await played.put({ id: "2" });
	assert.equal(played.waiting().length, 2);

	// The page is opened again, and then there is a network.
	const again = new Played(where, "segment", tell, nothing);
	reachable = true;
	await Promise.all([again.flush(), again.flush()]);
	assert.deepEqual(told, ["1", "2"]);
	assert.deepEqual(new Played(where, "segment", tell, nothing).waiting(), []);
});

test("what was left by the desk of another segment is found", () => {
	const where = { "rimebook.music.played.1": "[]", "rimebook.music.played.2": "[]", "rimebook.card": "1" };
	assert.deepEqual(others(where, "1"), ["2"]);
	assert.deepEqual(others({}, "1"), []);
});

test("what the service does not take is shown and holds nothing up", async () => {
	const played = new Played(disk(), "segment", ({ id }) => Promise.resolve(id === "1" ? "refused" : "noted"), nothing);
	await played.put({ id: "1" });
	await played.put({ id: "2" });
	assert.deepEqual(played.waiting(), []);
	assert.deepEqual(played.refused().map(({ id }) => id), ["1"]);
});

test("a disk that is full or holds nonsense costs nothing while the page is open", async () => {
	const told = [];
	const played = new Played(disk(true), "segment", ({ id }) => Promise.resolve(told.push(id) && "noted"), nothing);
	await played.put({ id: "1" });
	assert.deepEqual(told, ["1"]);
	const nonsense = { getItem: () => "{", setItem: nothing };
	assert.deepEqual(new Played(nonsense, "segment", nothing, nothing).waiting(), []);
});

test("files are loaded in order, again after a failure, and never short", async () => {
	const asked = [];
	let fault = "short";
	const loaded = new Loaded(({ version, bytes }) => {
		asked.push(version);
		if (fault === "gone") {
			return Promise.reject(new TypeError("no network"));
		}
		return Promise.resolve({ size: fault === "short" && version === "b" ? 1 : bytes });
	}, nothing);
	loaded.want([{ version: "a", bytes: 5 }, { version: "b", bytes: 6 }]);
	assert.equal(await loaded.load(), false);
	assert.equal(loaded.count(), 1);
	fault = "gone";
	assert.equal(await loaded.load(), false);
	fault = "";
	assert.equal(await loaded.load(), true);
	assert.deepEqual(asked, ["a", "b", "b", "b"]);
	assert.equal(loaded.count(), 2);

	// A newer version takes the place of one, which is let go.
	loaded.want([{ version: "a", bytes: 5 }, { version: "c", bytes: 7 }]);
	assert.equal(loaded.has("b"), false);
	assert.equal(loaded.count(), 1);
});

test("the next line is the next with a file", () => {
	const lines = [{ entry: "1", version: "a" }, { entry: "2" }, { entry: "3", version: "c" }];
	assert.equal(after(lines, "1").entry, "3");
	assert.equal(after(lines, "3"), undefined);
	assert.equal(after(lines, undefined).entry, "1");
	assert.equal(before(lines, "3").entry, "1");
	assert.equal(before(lines, "1"), undefined);
});

test("a desk that is opened goes on with the first that was not played", () => {
	const lines = [{ entry: "1" }, { entry: "2", version: "b", played: "2" }, { entry: "3", version: "c", played: "0" }];
	assert.equal(first(lines).entry, "3");
	assert.equal(first(lines.slice(0, 2)).entry, "2");
	assert.equal(first(lines.slice(0, 1)), undefined);
});

test("a time is minutes and seconds", () => {
	assert.deepEqual([0, 59.9, 60, 222].map(time), ["0:00", "0:59", "1:00", "3:42"]);
});
