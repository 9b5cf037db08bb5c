import { fit } from "../../main/resources/static/js/technical/search.js";
import assert from "node:assert/strict";
import { test } from "node:test";

const CODES = { ME4: "move element, level 4", TwE3: "twizzle element, level 3", I4: "intersection, level 4", "I4+pi3": "intersection, level 4, with point of intersection 3" };

/* Which codes what is typed fits, the best first, each with how well. */
function found(typed) {
	return Object.entries(CODES)
		.map(([code, name]) => [code, fit(typed, code, name)])
		.filter(([, rank]) => rank !== undefined)
		.sort((one, other) => one[1] - other[1]);
}

test("a code typed in full is that code, in whatever letters", () => {
	assert.deepEqual(found("TwE3"), [["TwE3", 0]]);
	assert.deepEqual(found(" twe3 "), [["TwE3", 1]]);
});

test("a code that is the beginning of another comes before it", () => {
	assert.deepEqual(found("i4"), [["I4", 1], ["I4+pi3", 2]]);
});

test("words of the name find a code, each by its beginning and in any order, and are never that code", () => {
	assert.deepEqual(found("4 move"), [["ME4", 3]]);
	assert.deepEqual(found("twizz"), [["TwE3", 3]]);
	assert.deepEqual(found("izzle"), []);
	assert.deepEqual(found("move 3"), []);
});
