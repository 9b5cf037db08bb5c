import { finished, isMark, signed, stepped, typeMark, wholeMark } from "../../main/resources/static/js/points/marks.js";
import assert from "node:assert/strict";
import { test } from "node:test";

/* Type these keys, "<" for taking back, until one is refused. */
function typed(keys) {
	let text = "";
	for (const key of keys) {
		const after = typeMark(text, key === "<" ? "erase" : key);
		if (after.refusal) {
			return [text, after.refusal];
		}
		({ text } = after);
	}
	return [text];
}

const CASES = {
	"7": ["7"],
	"7.": ["7."],
	"725": ["7.25"],
	"7.25": ["7.25"],
	"775": ["7.75"],
	"10": ["10.00"],
	"1.0": ["1.0"],
	"125": ["1.25"],
	"025": ["0.25"],
	"000": ["0.0", "no-zero"],
	".": ["", "whole-first"],
	"71": ["7", "quarter"],
	"726": ["7.2", "quarter"],
	"7258": ["8"],
	"7.<": ["7"],
	"725<": ["7.2"],
	"72<": ["7"],
	"<": [""],
};

for (const [keys, expected] of Object.entries(CASES)) {
	test(`typing ${keys} gives ${expected.join(" ")}`, () => assert.deepEqual(typed(keys), expected));
}

test("marks go by quarters from 0.25 to 10.00", () => {
	["0.25", "0.50", "0.75", "1.00", "9.75", "10.00"].forEach((mark) => assert.equal(isMark(mark), true, mark));
	["", "0.00", "7", "7.", "7.1", "7.10", "10.25", "11.00", "-1.00"].forEach((mark) => assert.equal(isMark(mark), false, mark));
});

test("Enter finishes what can only mean one mark", () => {
	const given = ["7", "7.", "7.5", "7.2", "10", "0", "", "11"].map(finished);
	assert.deepEqual(given, ["7.00", "7.00", "7.50", "7.25", "10.00", undefined, undefined, undefined]);
});

test("a step never leaves what can be given", () => {
	assert.deepEqual(stepped("7.25", 1), { text: "7.50" });
	assert.deepEqual(stepped("7", -1), { text: "6.75" });
	assert.deepEqual(stepped("9.75", 1), { text: "10.00" });
	assert.deepEqual(stepped("10.00", 1), { refusal: "above-ten" });
	assert.deepEqual(stepped("0.50", 1), { text: "0.75" });
	assert.deepEqual(stepped("0.25", -1), { refusal: "no-zero" });
	assert.deepEqual(stepped("0.50", -4), { refusal: "no-zero" });
	assert.deepEqual(stepped("", 1), { refusal: "whole-first" });
});

test("the lowest whole number that is touched is the lowest mark there is", () => {
	assert.deepEqual(["0", "1", "10"].map(wholeMark), ["0.25", "1.00", "10.00"]);
});

test("a grade carries its sign", () => {
	assert.deepEqual([-5, -1, 0, 1, 3].map(signed), ["−5", "−1", "0", "+1", "+3"]);
});
