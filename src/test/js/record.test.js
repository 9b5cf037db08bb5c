/* What a browser keeps of the record. */
import assert from "node:assert/strict";
import { test } from "node:test";
import { isContradicted, keep, lines, newest } from "../../main/resources/static/js/record/kept.js";

const DIGEST = "3fa9c0de".repeat(8);
const OTHER = "0badcafe".repeat(8);
const AT = new Date("2026-11-25T14:00:00Z");

function storage(content) {
	const items = new Map(content === undefined ? [] : [["rimebook.record", content]]);
	return { getItem: (key) => items.get(key) ?? null, setItem: (key, text) => items.set(key, text) };
}

function anchor(line, digest = DIGEST) {
	return "line " + line + " " + digest + " 2026-11-25T13:59:59.000Z";
}

test("an anchor is kept once, with the time of its first sight", () => {
	const disk = storage();
	assert.equal(keep(anchor(12), AT, disk), true);
	assert.equal(keep(anchor(12), new Date("2026-11-25T15:00:00Z"), disk), false);
	assert.deepEqual(lines(disk), [anchor(12) + " seen 2026-11-25T14:00:00.000Z"]);
});

test("they are given out by the number of their line", () => {
	const disk = storage();
	[200, 3, 40].forEach((line) => keep(anchor(line), AT, disk));
	assert.deepEqual(lines(disk).map((line) => line.split(" ")[1]), ["3", "40", "200"]);
	assert.equal(newest(disk), 40);
});

test("two digests under one number contradict each other, twice the same does not", () => {
	const disk = storage();
	keep(anchor(12), AT, disk);
	keep(anchor(12) + " signed " + "A".repeat(86), AT, disk);
	assert.equal(isContradicted(disk), false);
	keep(anchor(12, OTHER), AT, disk);
	assert.equal(isContradicted(disk), true);
});

test("what is no anchor is not kept, and a disk that holds nonsense is an empty one", () => {
	const disk = storage("{nonsense");
	assert.equal(keep("line 12", AT, disk), false);
	assert.deepEqual(lines(disk), []);
	assert.equal(keep(anchor(1), AT, disk), true);
	assert.deepEqual(lines(storage('[{"text":5},null]')), []);
});

test("a disk that is full or refused loses only the anchor", () => {
	const full = {
		getItem: () => null,
		setItem() {
			throw new Error("full");
		}
	};
	assert.equal(keep(anchor(1), AT, full), false);
});

test("of very many the oldest become fewer, and the first and the newest stay", () => {
	const disk = storage();
	for (let line = 1; line <= 1500; line++) {
		keep(anchor(line), AT, disk);
	}
	const numbers = lines(disk).map((line) => Number(line.split(" ")[1]));
	assert.ok(numbers.length <= 1000);
	assert.equal(numbers[0], 1);
	assert.equal(numbers.at(-1), 1500);
	assert.ok(numbers.filter((line) => line <= 500).length > 50);
});
