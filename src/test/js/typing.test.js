import { NOTHING_TYPED, choose, fromNumber, isComplete, isWhole, press, tenths } from "../../main/resources/static/js/pair/typing.js";
import assert from "node:assert/strict";
import { test } from "node:test";

/* Type these keys, "<" for taking back; tells both marks, where the next key goes, and the last refusal. */
function typed(keys, takesZero = true, from = NOTHING_TYPED) {
	let draft = from;
	let refusal;
	for (const key of keys) {
		({ typed: draft, refusal } = press(draft, key === "<" ? "erase" : key, takesZero));
	}
	return [draft.first, draft.second, draft.at, ...(refusal ? [refusal] : [])];
}

const CASES = {
	"5": ["5", "", "first"],
	"56": ["5.6", "", "second"],
	"5.6": ["5.6", "", "second"],
	"5.": ["5.", "", "first"],
	"5..6": ["5.6", "", "second"],
	"5655": ["5.6", "5.5", "send"],
	"5.65.5": ["5.6", "5.5", "send"],
	"6060": ["6.0", "6.0", "send"],
	"0000": ["0.0", "0.0", "send"],
	".": ["", "", "first", "whole-first"],
	"7": ["", "", "first", "above-six"],
	"61": ["6", "", "first", "above-six"],
	"610": ["6.0", "", "second"],
	"56555": ["5.6", "5.5", "send", "choose"],
	"<": ["", "", "first"],
	"5<": ["", "", "first"],
	"5.<": ["5", "", "first"],
	"56<": ["5", "", "first"],
	"56<7": ["5.7", "", "second"],
	"565<": ["5.6", "", "second"],
	"565<<": ["5", "", "first"],
	"5655<": ["5.6", "5", "second"],
	"5655<<<<": ["", "", "first"],
	"5655<<<<<": ["", "", "first"],
};

for (const [keys, expected] of Object.entries(CASES)) {
	test(`typing ${keys} gives ${expected.join(" ")}`, () => assert.deepEqual(typed(keys), expected));
}

test("a mark of 0.0 is refused where it means that nobody skated", () => {
	assert.deepEqual(typed("00", false), ["0", "", "first", "not-skated"]);
	assert.deepEqual(typed("01", false), ["0.1", "", "second"]);
});

test("a whole mark that is chosen again is typed anew, and typing goes on to what is missing", () => {
	const whole = { first: "5.6", second: "5.5", at: "send" };
	assert.deepEqual(typed("4", true, choose(whole, "first")), ["4", "5.5", "first"]);
	assert.deepEqual(typed("48", true, choose(whole, "first")), ["4.8", "5.5", "send"]);
	assert.deepEqual(typed("55", true, choose(NOTHING_TYPED, "second")), ["", "5.5", "first"]);
});

test("a refused key changes nothing that was typed", () => {
	const before = { first: "6", second: "5.5", at: "first" };
	assert.deepEqual(press(before, "3"), { typed: before, refusal: "above-six" });
});

test("a mark is whole from 0.0 to 6.0 with one figure behind the point", () => {
	["0.0", "0.1", "5.9", "6.0"].forEach((mark) => assert.equal(isWhole(mark), true, mark));
	["", "5", "5.", "6.1", "7.0", "5.55", "15.5", "-1.0", "5,5"].forEach((mark) => assert.equal(isWhole(mark), false, mark));
	assert.equal(isComplete({ first: "5.6", second: "5." }), false);
	assert.equal(isComplete({ first: "5", second: "5.6" }), false);
	assert.equal(isComplete({ first: "5.6", second: "5.6" }), true);
});

test("of a card that came from the service the second mark is taken back first", () => {
	assert.deepEqual(typed("<", true, { first: "5.6", second: "5.5", at: "send" }), ["5.6", "5", "second"]);
});

test("0.0 is taken where nobody says otherwise", () => {
	assert.equal(press({ ...NOTHING_TYPED, first: "0" }, "0").typed.first, "0.0");
});

test("marks are compared as whole numbers", () => {
	assert.equal(fromNumber(6), "6.0");
	assert.equal(tenths("5.6"), 56);
	assert.equal(tenths("0.1") + tenths("0.2"), 3);
});
