import { findKey, isOnward, listKey } from "../../main/resources/static/js/technical/keys.js";
import assert from "node:assert/strict";
import { test } from "node:test";

const CODES = { "4": "Digit4", "$": "Digit4", "b": "KeyB", "B": "KeyB", "0": "Digit0", "=": "Digit0" };

const key = (name, more) => ({ key: name, code: CODES[name] ?? "", ...more });

const SHIFT = { shiftKey: true };

const inList = (name, more) => listKey(key(name, more));

test("a level is the element's, with Shift the additional part's, whatever the keyboard writes", () => {
	for (const level of ["1", "2", "3", "4"]) {
		assert.deepEqual(inList(level, { code: "Digit" + level }), { does: "tool", act: "LEVEL", value: level });
		assert.deepEqual(inList(level, { code: "Numpad" + level }), { does: "tool", act: "LEVEL", value: level });
	}
	assert.deepEqual(inList("b"), { does: "tool", act: "LEVEL", value: "B" });
	assert.deepEqual(inList("$", SHIFT), { does: "tool", act: "PART", value: "4" });
	assert.deepEqual(inList("B", SHIFT), { does: "tool", act: "PART", value: "B" });
	assert.deepEqual(inList("=", SHIFT), { does: "tool", act: "PART", value: "" });
	assert.equal(inList("0"), undefined);
});

test("letters change the chosen element, in capitals they do not", () => {
	const letters = { d: "DOWNGRADE", r: "REVIEW", x: "NO_VALUE", m: "TOO_MANY", e: "EARLIER", l: "LATER", u: "UNDO", Delete: "REMOVE", Backspace: "REMOVE" };
	for (const [name, act] of Object.entries(letters)) {
		assert.deepEqual(inList(name), { does: "tool", act });
		assert.equal(inList(name, SHIFT), undefined);
	}
	assert.deepEqual(inList("i"), { does: "begin", mode: "insert" });
	assert.deepEqual(inList("c"), { does: "begin", mode: "change" });
});

test("f is a fall of one, with Shift of more", () => {
	assert.deepEqual(inList("f"), { does: "fall", quick: "ONE_FALL" });
	assert.deepEqual(inList("F", SHIFT), { does: "fall", quick: "MORE_FALLS" });
});

test("the browser keeps its own keys", () => {
	for (const held of ["ctrlKey", "metaKey", "altKey"]) {
		assert.equal(inList("r", { [held]: true }), undefined, held);
		assert.equal(inList("ArrowUp", { [held]: true }), undefined, held);
	}
	assert.equal(inList("Tab"), undefined);
	assert.equal(inList("Enter"), undefined);
});

test("arrows move by one", () => {
	assert.deepEqual(inList("ArrowUp"), { does: "move", by: -1 });
	assert.deepEqual(inList("ArrowDown"), { does: "move", by: 1 });
});

test("Control and Enter read back from anywhere, plain Enter does not", () => {
	assert.equal(isOnward({ key: "Enter", ctrlKey: true, metaKey: false }), true);
	assert.equal(isOnward({ key: "Enter", ctrlKey: false, metaKey: true }), true);
	assert.equal(isOnward({ key: "Enter", ctrlKey: false, metaKey: false }), false);
	assert.equal(findKey(key("Enter", { ctrlKey: true }), { code: "ME4", empty: false, mode: "call" }), undefined);
});

test("Enter calls a code, and refuses what is only like one", () => {
	assert.deepEqual(findKey(key("Enter"), { code: "ME4", empty: false, mode: "call" }), { does: "take", code: "ME4" });
	assert.deepEqual(findKey(key("Enter"), { code: undefined, empty: false, mode: "call" }), { does: "refuse" });
});

test("Enter in an empty field calls what is planned next, but not while it is held, nor for an insertion", () => {
	const empty = { code: undefined, empty: true };
	assert.deepEqual(findKey(key("Enter"), { ...empty, mode: "call" }), { does: "next" });
	assert.deepEqual(findKey(key("Enter", { repeat: true }), { ...empty, mode: "call" }), { does: "nothing" });
	assert.deepEqual(findKey(key("Enter"), { ...empty, mode: "insert" }), { does: "nothing" });
});

test("arrows choose a code while something is typed, else up goes to the list", () => {
	assert.deepEqual(findKey(key("ArrowDown"), { empty: false, mode: "call" }), { does: "look", by: 1 });
	assert.deepEqual(findKey(key("ArrowUp"), { empty: false, mode: "call" }), { does: "look", by: -1 });
	assert.deepEqual(findKey(key("ArrowUp"), { empty: true, mode: "call" }), { does: "last" });
	assert.deepEqual(findKey(key("ArrowDown"), { empty: true, mode: "call" }), { does: "nothing" });
});

test("Escape goes back step by step", () => {
	assert.deepEqual(findKey(key("Escape"), { empty: false, mode: "insert" }), { does: "clear" });
	assert.deepEqual(findKey(key("Escape"), { empty: true, mode: "insert" }), { does: "leave" });
	assert.deepEqual(findKey(key("Escape"), { empty: true, mode: "call" }), { does: "list" });
});

test("what is typed into the field stays the field's, also without a name of the key", () => {
	assert.equal(findKey(key("r"), { empty: true, mode: "call" }), undefined);
	assert.equal(findKey({}, { empty: true, mode: "call" }), undefined);
});
