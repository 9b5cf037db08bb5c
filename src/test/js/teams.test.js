import { fold, followed, toggle } from "../../main/resources/static/js/follow/teams.js";
import assert from "node:assert/strict";
import { test } from "node:test";

const ONE = "01a22ae3-0530-73d3-a7bd-36aaa66d90ba";
const OTHER = "01a22ae3-04f5-76c8-8472-c8bf64eac05b";

function storage(kept = {}) {
	return { getItem: (key) => kept[key] ?? null, setItem: (key, value) => (kept[key] = value) };
}

test("a team is followed until it no longer is, in its competition alone", () => {
	const disk = storage();
	assert.equal(toggle("cup", ONE, disk), true);
	assert.equal(toggle("cup", OTHER, disk), true);
	assert.deepEqual(followed("cup", disk), [ONE, OTHER]);
	assert.deepEqual(followed("other-cup", disk), []);
	assert.equal(toggle("cup", ONE, disk), false);
	assert.deepEqual(followed("cup", disk), [OTHER]);
});

test("what somebody else put there follows nobody", () => {
	assert.deepEqual(followed("cup", storage({ "rimebook.teams.cup": "{" })), []);
	assert.deepEqual(followed("cup", storage({ "rimebook.teams.cup": '["../desk",1]' })), []);
	assert.deepEqual(followed("cup", storage({ "rimebook.teams.cup": '{"a":1}' })), []);
});

test("a browser that keeps nothing says that the team is not followed", () => {
	const full = {
		getItem: () => null,
		setItem: () => {
			throw new Error("full");
		},
	};
	assert.equal(toggle("cup", ONE, full), false);
});

test("twenty teams are followed at most, the newest among them", () => {
	const disk = storage();
	const many = Array.from({ length: 22 }, (_, at) => ONE.slice(0, -2) + String(10 + at));
	many.forEach((entry) => toggle("cup", entry, disk));
	assert.equal(followed("cup", disk).length, 20);
	assert.equal(followed("cup", disk).at(-1), many.at(-1));
});

test("names are found however they are typed", () => {
	assert.equal(fold("Åsvind"), "asvind");
	assert.equal(fold("Øyrelund Skating-Club"), "oyrelundskatingclub");
});
