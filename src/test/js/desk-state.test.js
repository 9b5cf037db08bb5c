import { DeskState } from "../../main/resources/static/js/technical/state.js";
import assert from "node:assert/strict";
import { test } from "node:test";

const IN_LIST = true;
const AT_FIELD = false;

const row = (id) => ({ id, number: "1", code: "ME4" });

const list = (...ids) => ({ sequence: String(ids.length), rows: ids.map(row) });

test("the last element is chosen when the desk opens, and none of an empty list", () => {
	assert.equal(new DeskState(list("a", "b")).row.id, "b");
	assert.equal(new DeskState(list()).row, undefined);
});

test("what was just called is chosen", () => {
	const state = new DeskState(list("a"));
	state.renew(list("a", "b"), AT_FIELD);
	assert.equal(state.row.id, "b");
	state.renew(list("c", "a", "b"), AT_FIELD);
	assert.equal(state.row.id, "c");
});

test("a call of the other desk takes no element out of the hands that are in the list", () => {
	const state = new DeskState(list("a", "b"));
	state.choose("a");
	state.renew(list("a", "b", "c"), IN_LIST);
	assert.equal(state.row.id, "a");
});

test("a call of the other desk does not change what an insertion is before", () => {
	const state = new DeskState(list("a", "b"));
	state.choose("a");
	state.begin("insert", AT_FIELD);
	state.renew(list("a", "b", "c"), AT_FIELD);
	assert.equal(state.row.id, "a");
	assert.equal(state.mode, "insert");
});

test("the element that moved up comes in the place of one that is gone, else the last", () => {
	const state = new DeskState(list("a", "b", "c"));
	state.choose("b");
	state.renew(list("a", "c"), IN_LIST);
	assert.equal(state.row.id, "c");
	state.renew(list("a"), IN_LIST);
	assert.equal(state.row.id, "a");
	state.renew(list(), IN_LIST);
	assert.equal(state.row, undefined);
});

test("whoever changes an element that is gone calls again: the code hits no other element", () => {
	const state = new DeskState(list("a", "b"));
	state.choose("a");
	state.begin("change", IN_LIST);
	assert.equal(state.takes, "CODE");
	state.renew(list("b"), AT_FIELD);
	assert.equal(state.mode, "call");
	assert.equal(state.takes, "CALL");
});

test("a code is called, inserted or put in the place of another", () => {
	const state = new DeskState(list("a"));
	assert.equal(state.takes, "CALL");
	assert.equal(state.begin("insert", AT_FIELD), true);
	assert.equal(state.takes, "INSERT");
	state.begin("change", AT_FIELD);
	assert.equal(state.takes, "CODE");
	state.leave();
	assert.equal(state.takes, "CALL");
});

test("nothing is inserted into an empty list", () => {
	const state = new DeskState(list());
	assert.equal(state.begin("insert", AT_FIELD), false);
	assert.equal(state.mode, "call");
});

test("the hands go back to the list only if they came from it, and once", () => {
	const state = new DeskState(list("a"));
	assert.equal(state.goesToList(), false);
	state.begin("change", IN_LIST);
	assert.equal(state.goesToList(), true);
	assert.equal(state.goesToList(), false);
	state.begin("change", AT_FIELD);
	assert.equal(state.goesToList(), false);
});

test("an act names the chosen element, except one that needs none", () => {
	const state = new DeskState(list("a", "b"));
	state.choose("a");
	assert.deepEqual(state.fields("LEVEL", "4"), [["act", "LEVEL"], ["value", "4"], ["element", "a"]]);
	assert.deepEqual(state.fields("CALL", "ME4"), [["act", "CALL"], ["value", "ME4"]]);
	assert.deepEqual(state.fields("UNDO", ""), [["act", "UNDO"], ["value", ""]]);
});

test("without an element only what needs none can be done", () => {
	const state = new DeskState({ sequence: "3", rows: [] });
	assert.equal(state.fields("LEVEL", "4"), undefined);
	assert.notEqual(state.fields("CALL", "ME4"), undefined);
	assert.equal(state.isPossible("REVIEW"), false);
	assert.equal(state.isPossible("UNDO"), true);
});

test("nothing can be undone before the first call", () => {
	assert.equal(new DeskState({ sequence: "0", rows: [row("a")] }).isPossible("UNDO"), false);
});

test("what can be done is what the service says of the chosen element", () => {
	const able = { ...row("a"), levels: "B1234", parts: "34", withoutPart: "true", downgrade: "true" };
	const unable = { ...row("b"), withoutPart: "false", downgrade: "false" };
	const state = new DeskState({ sequence: "2", rows: [able, unable] });
	const acts = [["LEVEL", "4"], ["PART", "4"], ["PART", ""], ["DOWNGRADE"], ["REVIEW"]];
	assert.deepEqual(acts.map(([act, value]) => state.isPossible(act, value)), [false, false, false, false, true]);
	state.choose("a");
	assert.deepEqual(acts.map(([act, value]) => state.isPossible(act, value)), [true, true, true, true, true]);
	assert.equal(state.isPossible("PART", "2"), false);
});

test("reading back waits for what is on its way, and is asked for once", () => {
	const state = new DeskState(list("a"));
	assert.equal(state.goesOnward(0), false);
	state.askOnward();
	assert.equal(state.goesOnward(2), false);
	assert.equal(state.goesOnward(1), false);
	assert.equal(state.goesOnward(0), true);
	assert.equal(state.goesOnward(0), false);
});

test("nothing is read back while something is refused, until it is asked for again", () => {
	const state = new DeskState(list("a"));
	const act = { words: "Call ME4" };
	state.askOnward();
	state.answered([act], AT_FIELD);
	assert.equal(state.goesOnward(0), false);
	assert.deepEqual(state.decide(), [act]);
	assert.deepEqual(state.decide(), []);
	assert.equal(state.goesOnward(0), false);
	state.askOnward();
	assert.equal(state.goesOnward(0), true);
});

test("an act that was done while a code is changed leaves the way back to the list", () => {
	const state = new DeskState(list("a"));
	state.begin("change", IN_LIST);
	state.answered([], AT_FIELD);
	assert.equal(state.goesToList(), true);
});

test("a refusal sends the hands back to where they were", () => {
	const state = new DeskState(list("a"));
	state.answered([{}], IN_LIST);
	assert.equal(state.goesToList(), true);
	state.answered([{}], AT_FIELD);
	assert.equal(state.goesToList(), false);
});
