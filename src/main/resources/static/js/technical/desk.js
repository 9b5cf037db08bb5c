/*
 * The technical desk. What is called goes out at once and comes back as the list that counts; the page
 * follows a second desk once a second. Each look only exchanges the parts that changed, so it can never
 * disturb what is being typed.
 */
import { Kept } from "./kept.js";
import { Outgoing } from "./outgoing.js";
import { part, prints, replace, rows } from "./parts.js";
import { Search } from "./search.js";

const LOOK_EVERY = 1000;
const LONGEST_SILENCE = 5000;
const LEVELS = { KeyB: "B", Digit1: "1", Digit2: "2", Digit3: "3", Digit4: "4", Numpad1: "1", Numpad2: "2", Numpad3: "3", Numpad4: "4" };
const ACTS = { d: "DOWNGRADE", r: "REVIEW", x: "NO_VALUE", m: "TOO_MANY", e: "EARLIER", l: "LATER", u: "UNDO", delete: "REMOVE", backspace: "REMOVE" };

const { path, who } = document.querySelector(".technical").dataset;
const find = part("find");
const field = part("code");
const outgoing = new Outgoing(send, told, new Kept(path, who));
let search;
let mode = "call";
let chosen = "";
let fromList = false;
let onward = false;
let refused = [];
let heard = Date.now();
let sent = 0;

/* Out */

async function post(act) {
	const fields = [["performance", act.performance], ["sequence", act.sequence], ...act.fields];
	const body = new URLSearchParams([...fields, ...prints(), ["_csrf", find.elements._csrf.value]]);
	try {
		const answer = await fetch(path + act.to, { method: "POST", body, redirect: "manual" });
		return { answer, html: await answer.text() };
	}
	catch {
		return {};
	}
}

/* Tells whether there was an answer. */
async function send(act) {
	sent++;
	act.sequence ??= part(act.list).dataset.sequence;
	outgoing.keep();
	const { answer, html } = await post(act);
	if (!answer || answer.status >= 500) {
		return false;
	}
	heard = Date.now();
	if (answer.type === "opaqueredirect" || [401, 403].includes(answer.status)) {
		return leaveToSignIn();
	}
	const inList = part("called").contains(document.activeElement);
	part("refused").hidden = true;
	drawn(html);
	refused = [409, 422].includes(answer.status) ? [act, ...outgoing.clear()] : [];
	if (refused.length > 0) {
		part("refused").querySelector(".own").textContent = refused.map(({ words }) => words).join("; ");
		part("refused").querySelector("button").focus();
		fromList = inList;
	}
	return true;
}

/* The act is kept, and sent once somebody has signed in again. */
function leaveToSignIn() {
	location.reload();
	return new Promise(() => {});
}

function told(waiting) {
	part("sending").hidden = waiting === 0;
	if (waiting === 0 && onward) {
		onward = false;
		if (refused.length === 0) {
			location.href = part("read-back").href;
		}
	}
}

/* The list is read back as it is once everything that was called has arrived. */
function readBack() {
	onward = true;
	told(outgoing.busy ? 1 : 0);
}

function edit(name, value, words, element = chosen) {
	const fields = [["act", name], ["value", value]];
	if (!["CALL", "UNDO"].includes(name)) {
		if (!element) {
			return;
		}
		fields.push(["element", element]);
	}
	add({ list: "called", to: "/list", fields, words });
}

function add(act) {
	const performance = part("ice").dataset.performance;
	if (performance) {
		outgoing.add({ ...act, performance });
	}
}

/* In */

async function look() {
	const before = sent;
	try {
		const answer = await fetch(path + "/live?" + new URLSearchParams(prints()), { redirect: "manual" });
		if (answer.ok) {
			heard = Date.now();
		}
		if (answer.status === 200 && before === sent && !outgoing.busy) {
			drawn(await answer.text());
		}
	}
	catch {
		// No contact: the strip says so, and the next look comes by itself.
	}
	part("no-contact").hidden = Date.now() - heard < LONGEST_SILENCE;
	setTimeout(look, LOOK_EVERY);
}

/* What cannot be shown is said, and keeps nothing from being looked for or sent. */
function drawn(html) {
	try {
		show(html);
		part("fault").hidden = true;
	}
	catch (fault) {
		part("fault").hidden = false;
		console.error(fault);
	}
}

function show(html) {
	const at = rows().findIndex((row) => row.dataset.id === chosen);
	const inList = part("called").contains(document.activeElement);
	const before = rows().map((row) => row.dataset.id);
	replace(html);
	const added = rows().filter((row) => !before.includes(row.dataset.id));
	if (!inList && mode === "call" && added.length > 0) {
		chosen = added.at(-1).dataset.id;
	}
	if (!rows().some((row) => row.dataset.id === chosen)) {
		chosen = (rows()[Math.min(at, rows().length - 1)] ?? rows().at(-1))?.dataset.id ?? "";
		if (mode !== "call") {
			turn("call");
		}
	}
	mark();
	if (inList && !part("called").contains(document.activeElement)) {
		current()?.focus();
	}
}

const current = () => rows().find((row) => row.dataset.id === chosen);

const named = (row) => row.dataset.number + " " + row.dataset.code;

function mark() {
	rows().forEach((row) => {
		row.tabIndex = row.dataset.id === chosen ? 0 : -1;
		row.toggleAttribute("aria-current", row.dataset.id === chosen);
		if (row.dataset.id === chosen) {
			row.setAttribute("aria-current", "true");
		}
	});
	const row = current();
	const title = part("chosen");
	if (title) {
		title.textContent = row ? title.dataset.word.replace("{0}", named(row)) : title.dataset.none;
		document.querySelectorAll(".tools [data-act]").forEach((button) => (button.disabled = !isPossible(button, row)));
	}
}

function isPossible({ dataset: { act, value } }, row) {
	if (act === "UNDO") {
		return part("called").dataset.sequence !== "0";
	}
	if (!row) {
		return false;
	}
	switch (act) {
		case "LEVEL": return (row.dataset.levels ?? "").includes(value);
		case "PART": return value ? (row.dataset.parts ?? "").includes(value) : row.dataset.withoutPart === "true";
		case "DOWNGRADE": return row.dataset.downgrade === "true";
		default: return true;
	}
}

/* Calling */

function turn(next) {
	mode = next;
	const row = current();
	const words = part("find-mode");
	words.textContent = words.dataset[next].replace("{0}", row ? named(row) : "");
	part("find-leave").hidden = next === "call";
	find.classList.toggle("turned", next !== "call");
}

function begin(next) {
	if (current()) {
		fromList = part("called").contains(document.activeElement);
		turn(next);
		search.clear();
		field.focus();
	}
}

function take(code) {
	const words = part("find-mode").textContent + " " + code;
	edit({ call: "CALL", insert: "INSERT", change: "CODE" }[mode], code, words);
	search.clear();
	if (mode !== "call") {
		leaveMode();
	}
}

function leaveMode() {
	turn("call");
	if (fromList) {
		current()?.focus();
	}
	fromList = false;
}

function takeNext() {
	document.querySelector("#plan [data-next]")?.click();
}

function onFind(event) {
	if (isOnward(event)) {
		return;
	}
	const moves = { ArrowDown: 1, ArrowUp: -1 };
	if (event.key === "Enter") {
		event.preventDefault();
		if (search.code) {
			take(search.code);
		}
		else if (search.empty && mode === "call" && !event.repeat) {
			takeNext();
		}
		else if (!search.empty) {
			search.refuse();
		}
	}
	else if (event.key in moves) {
		event.preventDefault();
		if (!search.empty) {
			search.move(moves[event.key]);
		}
		else if (event.key === "ArrowUp") {
			choose(rows().at(-1));
		}
	}
	else if (event.key === "Escape") {
		event.preventDefault();
		if (!search.empty) {
			search.clear();
		}
		else if (mode !== "call") {
			leaveMode();
		}
		else {
			current()?.focus();
		}
	}
}

function choose(row) {
	if (row) {
		chosen = row.dataset.id;
		mark();
		row.focus();
	}
}

/* From wherever the hands are */

const isOnward = ({ key, ctrlKey, metaKey }) => key === "Enter" && (ctrlKey || metaKey);

function onAnywhere(event) {
	if (isOnward(event) && !event.repeat) {
		event.preventDefault();
		readBack();
	}
}

function onReadBack(event) {
	event.preventDefault();
	readBack();
}

/* Keys of the called list */

function onList(event) {
	if (event.ctrlKey || event.metaKey || event.altKey || !event.target.closest(".row")) {
		return;
	}
	if (onListKey(event)) {
		event.preventDefault();
	}
}

function onListKey(event) {
	const key = event.key.toLowerCase();
	const at = rows().indexOf(event.target.closest(".row"));
	if (key === "arrowdown" || key === "arrowup") {
		choose(rows()[at + (key === "arrowdown" ? 1 : -1)]);
		if (key === "arrowdown" && at === rows().length - 1) {
			field?.focus();
		}
	}
	else if (!find) {
		return false;
	}
	else if (event.code in LEVELS) {
		tool(event.shiftKey ? "PART" : "LEVEL", LEVELS[event.code]);
	}
	else if (["Digit0", "Numpad0"].includes(event.code) && event.shiftKey) {
		tool("PART", "");
	}
	else if (key in ACTS && !event.shiftKey) {
		tool(ACTS[key]);
	}
	else if (key === "c" || key === "i") {
		begin(key === "c" ? "change" : "insert");
	}
	else if (key === "n") {
		takeNext();
	}
	else if (key === "f") {
		document.querySelector(`[data-quick=${event.shiftKey ? "MORE_FALLS" : "ONE_FALL"}]`)?.click();
	}
	else if (key === "g") {
		readBack();
	}
	else if (key === "/" || key === "escape") {
		field.focus();
	}
	else {
		return false;
	}
	return true;
}

/* As if the button was touched, also where the page says that it is not possible: the service says why. */
function tool(act, value) {
	const button = Array.from(document.querySelectorAll(`.tools [data-act=${act}]`)).find((each) => (each.dataset.value ?? undefined) === value);
	edit(act, value ?? "", spoken(button));
}

function spoken(button) {
	const words = Array.from(button.children).filter((child) => child.tagName !== "KBD").map((child) => child.textContent.trim()).join(" ");
	const row = current();
	return row && button.closest(".tools") && button.dataset.act !== "UNDO" ? named(row) + ": " + words : words;
}

/* Touch */

function onClick(event) {
	const button = event.target.closest("button");
	if (!button) {
		return;
	}
	const { act, value, quick, back } = button.dataset;
	if (button.classList.contains("row")) {
		choose(button);
	}
	else if (act === "CODE" || act === "INSERT") {
		begin(act === "CODE" ? "change" : "insert");
	}
	else if (act === "CALL") {
		edit("CALL", value, button.querySelector(".unseen").textContent + " " + value);
	}
	else if (act) {
		edit(act, value ?? "", spoken(button));
	}
	else if (quick) {
		add({ list: "deducted", to: "/deductions", fields: [["quick", quick]], words: spoken(button) });
	}
	else if (back) {
		add({ list: "deducted", to: "/deductions/back", fields: [["index", back]], words: button.textContent.trim() });
	}
	else if ("seen" in button.dataset) {
		add({ list: "deducted", to: "/deductions/seen", fields: [], words: button.textContent.trim() });
	}
	else if ("again" in button.dataset || "leave" in button.dataset) {
		answer("again" in button.dataset);
	}
	else if (button.id === "find-leave") {
		search.clear();
		leaveMode();
	}
}

function answer(again) {
	const acts = refused;
	refused = [];
	part("refused").hidden = true;
	if (again) {
		acts.forEach((act) => outgoing.add({ ...act, sequence: undefined }));
	}
	if (fromList) {
		current()?.focus();
	}
	else {
		field.focus();
	}
	fromList = false;
}

/* Only now can the field be typed into: a key before this would be lost. */
function listen() {
	field.disabled = false;
	if (document.activeElement === document.body) {
		field.focus();
	}
}

if (find) {
	search = new Search(field, part("codes"), part("none-found"), part("no-code"), take);
	find.addEventListener("submit", (event) => event.preventDefault());
	field.addEventListener("keydown", onFind);
	document.addEventListener("click", onClick);
	document.addEventListener("keydown", onAnywhere);
	part("read-back").addEventListener("click", onReadBack);
	listen();
}
document.addEventListener("keydown", onList);
chosen = rows().at(-1)?.dataset.id ?? "";
mark();
if (find && outgoing.busy) {
	outgoing.go();
}
setTimeout(look, LOOK_EVERY);
