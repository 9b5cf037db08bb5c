import { settled, storage } from "./support/page.js";
import { Disk } from "./support/disk.js";
import assert from "node:assert/strict";
import { beforeEach, mock, test } from "node:test";

const SCRIPT = "../../main/resources/static/js/card/shelf.js";
const CARDS = [{ id: "a", first: 56 }];

let disk;
let loads = 0;

/* Pages of this process hear each other, and none keeps it alive. */
globalThis.BroadcastChannel = class extends BroadcastChannel {

	constructor(name) {
		super(name);
		this.unref();
	}

};

beforeEach(() => {
	disk = new Disk();
	globalThis.indexedDB = disk;
	globalThis.localStorage = storage();
});

/* The page as it is after a reload: nothing in memory but what it finds. */
async function loaded(seat = "seat-1") {
	const { Shelf } = await import(SCRIPT + "?load=" + loads++);
	return new Shelf(seat);
}

test("a reload finds what was written last", async () => {
	const shelf = await loaded();
	shelf.write("cards", []);
	shelf.write("cards", CARDS);
	shelf.write("turned", "p1");
	await settled();
	const again = await loaded();
	assert.deepEqual(again.read("cards", []), CARDS);
	assert.equal(again.read("turned", null), "p1");
	assert.equal(again.read("typed/p1", null), null);
});

test("what was taken away stays away", async () => {
	const shelf = await loaded();
	shelf.write("unsent", { startNumber: 3 });
	await settled();
	shelf.remove("unsent");
	await settled();
	assert.equal(shelf.read("unsent", null), null);
	assert.equal((await loaded()).read("unsent", null), null);
});

test("another seat on the same tablet finds nothing of it", async () => {
	(await loaded()).write("cards", CARDS);
	await settled();
	assert.deepEqual((await loaded("seat-2")).read("cards", []), []);
});

test("a card is there at once, and said to be kept only once the disk has it", async () => {
	const shelf = await loaded();
	let told = 0;
	shelf.onChange = () => told++;
	disk.held = true;
	shelf.write("cards", CARDS);
	assert.deepEqual(shelf.read("cards", []), CARDS);
	await settled();
	assert.equal(shelf.isKept("cards"), false);
	assert.equal(shelf.isKept(), false);
	assert.equal(shelf.isKept("turned"), true);
	await disk.letThrough();
	assert.equal(shelf.isKept("cards"), true);
	assert.equal(shelf.isKept(), true);
	assert.equal(told, 1);
});

test("a browser killed before the disk had it has lost exactly what was not said to be kept", async () => {
	const shelf = await loaded();
	shelf.write("turned", "p1");
	await settled();
	disk.held = true;
	shelf.write("cards", CARDS);
	const again = await loaded();
	assert.equal(again.read("turned", null), "p1");
	assert.deepEqual(again.read("cards", []), []);
	assert.equal(shelf.isKept("cards"), false);
});

test("an older change that reaches the disk says nothing of the newer one", async () => {
	const shelf = await loaded();
	disk.held = true;
	shelf.write("cards", []);
	shelf.write("cards", CARDS);
	await disk.letThrough();
	assert.equal(shelf.isKept("cards"), false);
	await disk.letThrough();
	assert.equal(shelf.isKept("cards"), true);
});

test("every change is asked to survive a power cut", async () => {
	(await loaded()).write("cards", CARDS);
	await settled();
	assert.deepEqual([...disk.durabilities], ["strict"]);
});

test("a full disk is said, and what it refused is written as soon as there is room", async () => {
	const shelf = await loaded();
	let told = 0;
	shelf.onChange = () => told++;
	disk.full = true;
	shelf.write("cards", CARDS);
	await settled();
	assert.equal(told, 1);
	assert.equal(shelf.isLasting(), false);
	assert.equal(shelf.isKept("cards"), false);
	assert.deepEqual(shelf.read("cards", []), CARDS);
	disk.full = false;
	shelf.write("turned", "p1");
	await settled();
	assert.equal(shelf.isLasting(), true);
	assert.equal(shelf.isKept("cards"), true);
	assert.deepEqual((await loaded()).read("cards", []), CARDS);
});

test("what cannot be read any more is nothing", async () => {
	disk.stored.set("rimebook/seat-1/cards", "[{");
	assert.deepEqual((await loaded()).read("cards", []), []);
});

test("a browser without a database works from memory and says so", async () => {
	globalThis.indexedDB = {
		open() {
			throw new Error("private window");
		},
	};
	const shelf = await loaded();
	shelf.write("cards", CARDS);
	await settled();
	assert.deepEqual(shelf.read("cards", []), CARDS);
	assert.equal(shelf.isLasting(), false);
	assert.equal(shelf.isKept("cards"), false);
});

test("a database that cannot be opened or read is none, and nobody waits for it", async () => {
	disk.broken = true;
	assert.equal((await loaded()).isLasting(), false);
	disk.broken = false;
	disk.unreadable = true;
	assert.equal((await loaded()).isLasting(), false);
});

test("a tablet that kept something before is found by this version of the page", async () => {
	disk.version = 1;
	disk.stores.add("shelf");
	disk.stored.set("rimebook/seat-1/cards", JSON.stringify(CARDS));
	const shelf = await loaded();
	assert.deepEqual(shelf.read("cards", []), CARDS);
	assert.equal(shelf.isLasting(), true);
});

test("a database that never answers keeps nobody from marking", async (context) => {
	disk.answers = false;
	mock.timers.enable({ apis: ["setTimeout"] });
	context.after(() => mock.timers.reset());
	const opening = loaded();
	while (disk.asked === 0) {
		await settled();
	}
	mock.timers.tick(15000);
	const shelf = await opening;
	assert.equal(shelf.isLasting(), false);
	shelf.write("cards", CARDS);
	assert.deepEqual(shelf.read("cards", []), CARDS);
});

test("what an earlier version kept elsewhere is moved in, nothing newer written over, and the rest left alone", async () => {
	disk.stored.set("rimebook/seat-1/turned", '"newer"');
	globalThis.localStorage = storage({ "rimebook/seat-1/cards": JSON.stringify(CARDS), "rimebook/seat-1/turned": '"older"', "else": "1" });
	const shelf = await loaded();
	assert.deepEqual(shelf.read("cards", []), CARDS);
	assert.equal(shelf.read("turned", null), "newer");
	assert.equal(disk.stored.get("rimebook/seat-1/cards"), JSON.stringify(CARDS));
	assert.deepEqual(Object.keys(localStorage), ["else"]);
});

test("two pages of one tablet know of each other's changes", async () => {
	const one = await loaded();
	const two = await loaded();
	const told = new Promise((resolve) => (two.onChange = resolve));
	one.write("cards", CARDS);
	await told;
	assert.deepEqual(two.read("cards", []), CARDS);
});
