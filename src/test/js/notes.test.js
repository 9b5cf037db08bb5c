import { asText, erase, notes, write } from "../../main/resources/static/js/commentary/notes.js";
import assert from "node:assert/strict";
import { test } from "node:test";

const ONE = "01a22ae3-0530-73d3-a7bd-36aaa66d90ba";

function storage(kept = {}) {
	return {
		getItem: (key) => kept[key] ?? null,
		setItem: (key, value) => (kept[key] = value),
		removeItem: (key) => delete kept[key],
	};
}

test("a note is kept for its team, in its competition alone, and an empty one is forgotten", () => {
	const disk = storage();
	assert.equal(write("cup", ONE, "Pine", "third time here", disk), true);
	assert.deepEqual(notes("cup", disk), { [ONE]: { team: "Pine", text: "third time here" } });
	assert.deepEqual(notes("other-cup", disk), {});
	write("cup", ONE, "Pine", "  ", disk);
	assert.deepEqual(notes("cup", disk), {});
});

test("notes are given out as a text, and erased", () => {
	const disk = storage();
	write("cup", ONE, "Pine", "third time here", disk);
	assert.equal(asText("cup", disk), "Pine\nthird time here\n");
	assert.equal(erase("cup", disk), true);
	assert.equal(asText("cup", disk), "");
});

test("what somebody else put there is no note, and a full disk is told", () => {
	assert.deepEqual(notes("cup", storage({ "rimebook.notes.cup": "{" })), {});
	assert.deepEqual(notes("cup", storage({ "rimebook.notes.cup": "[1]" })), {});
	const full = {
		getItem: () => null,
		setItem: () => {
			throw new Error("full");
		},
	};
	assert.equal(write("cup", ONE, "Pine", "x", full), false);
});
