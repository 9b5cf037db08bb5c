/*
 * The technical desk: what is touched and typed on the page, and what comes of it. Each look only exchanges the
 * parts that changed, so it can never disturb what is being typed.
 */
import { findKey, isOnward, listKey } from "./keys.js";
import { Kept } from "./kept.js";
import { called, part, prints, replace, rows } from "./parts.js";
import { Search } from "./search.js";
import { DeskState } from "./state.js";
import { Transport } from "./transport.js";
import { drawDesk, spoken } from "./view.js";

const { path, who } = document.querySelector(".technical").dataset;
const find = part("find");
const field = part("code");
const search = find && new Search(field, part("codes"), part("none-found"), part("no-code"), take);
const state = new DeskState(called());
const transport = new Transport(path, new Kept(path, who), {
	prints,
	token: () => find.elements._csrf.value,
	sequenceOf: (list) => part(list).dataset.sequence,
	show: drawn,
	answered,
	failed,
	waiting,
	contact: (isThere) => (part("no-contact").hidden = isThere),
	signIn: () => location.reload(),
});

const isInList = () => part("called").contains(document.activeElement);

/* Out */

function edit(name, value, words) {
	const fields = state.fields(name, value);
	if (fields) {
		add({ list: "called", to: "/list", fields, words });
	}
}

function deduct(way, fields, words) {
	add({ list: "deducted", to: "/deductions" + way, fields, words });
}

function add(act) {
	const { performance } = part("ice").dataset;
	if (performance) {
		transport.add({ ...act, performance });
	}
}

function waiting(number) {
	part("sending").hidden = number === 0;
	if (state.goesOnward(number)) {
		location.href = part("read-back").href;
	}
}

/* While nobody is on the ice there is nothing to read back. */
function readBack() {
	if (part("onward").hidden) {
		return;
	}
	state.askOnward();
	waiting(transport.busy ? 1 : 0);
}

/* In */

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
	const inList = isInList();
	try {
		replace(html);
	}
	finally {
		state.renew(called(), inList);
		drawDesk(state);
	}
	if (inList && !isInList()) {
		toList();
	}
}

function answered(html, refused) {
	const inList = isInList();
	settled();
	drawn(html);
	state.answered(refused, inList);
	if (refused.length > 0) {
		say("refused", refused);
	}
}

/* The list that is shown is as it was; the next look brings what has changed. */
function failed(acts) {
	settled();
	state.answered(acts, isInList());
	part("not-done").hidden = false;
	say("not-done", acts);
}

function say(box, acts) {
	part(box).querySelector(".own").textContent = acts.map(({ words }) => words).join("; ");
	part(box).querySelector("button").focus();
}

function settled() {
	part("refused").hidden = true;
	part("not-done").hidden = true;
}

function decide(again) {
	const acts = state.decide();
	settled();
	if (again) {
		transport.addAgain(acts);
	}
	if (state.goesToList()) {
		toList();
	}
	else {
		field.focus();
	}
}

/* Calling */

function toList() {
	rows().find((row) => row.dataset.id === state.row?.id)?.focus();
}

function choose(row) {
	if (row) {
		state.choose(row.dataset.id);
		drawDesk(state);
		row.focus();
	}
}

function begin(mode) {
	if (state.begin(mode, isInList())) {
		drawDesk(state);
		search.clear();
		field.focus();
	}
}

function take(code) {
	edit(state.takes, code, part("find-mode").textContent + " " + code);
	search.clear();
	if (state.mode !== "call") {
		leave();
	}
}

function leave() {
	state.leave();
	drawDesk(state);
	if (state.goesToList()) {
		toList();
	}
}

function takeNext() {
	document.querySelector("#plan [data-next]")?.click();
}

/* As if the button was touched, also where the page says that it is not possible: the service says why. */
function tool({ act, value }) {
	const button = Array.from(document.querySelectorAll(`.tools [data-act=${act}]`)).find((each) => (each.dataset.value ?? undefined) === value);
	edit(act, value ?? "", spoken(button, state.row));
}

/* Keys */

const IN_FIELD = {
	take: ({ code }) => take(code),
	next: takeNext,
	refuse: () => search.refuse(),
	look: ({ by }) => search.move(by),
	last: () => choose(rows().at(-1)),
	clear: () => search.clear(),
	leave,
	list: toList,
	nothing: () => {},
};

function onFind(event) {
	const { code, empty } = search;
	const meant = findKey(event, { code, empty, mode: state.mode });
	if (meant) {
		event.preventDefault();
		IN_FIELD[meant.does](meant);
	}
}

const IN_LIST = {
	move: ({ by }, row) => move(row, by),
	tool,
	begin: ({ mode }) => begin(mode),
	next: takeNext,
	fall: ({ quick }) => document.querySelector(`[data-quick=${quick}]`)?.click(),
	readBack,
	find: () => field.focus(),
};

/* Who only reads moves in the list and changes nothing. */
function onList(event) {
	const row = event.target.closest(".row");
	const meant = row && listKey(event);
	if (meant && (find || meant.does === "move")) {
		event.preventDefault();
		IN_LIST[meant.does](meant, row);
	}
}

/* Below the last row comes the field. */
function move(row, by) {
	const at = rows().indexOf(row) + by;
	choose(rows()[at]);
	if (at === rows().length) {
		field?.focus();
	}
}

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

/* Touch */

function onClick(event) {
	const button = event.target.closest("button");
	if (button?.classList.contains("row")) {
		choose(button);
	}
	else if (button?.dataset.act) {
		onAct(button, button.dataset);
	}
	else if (button?.id === "find-leave") {
		search.clear();
		leave();
	}
	else if (button) {
		onOther(button, button.dataset);
	}
}

function onAct(button, { act, value }) {
	if (act === "CODE" || act === "INSERT") {
		begin(act === "CODE" ? "change" : "insert");
	}
	else if (act === "CALL") {
		edit("CALL", value, button.querySelector(".unseen").textContent + " " + value);
	}
	else {
		edit(act, value ?? "", spoken(button, state.row));
	}
}

function onOther(button, { quick, back, seen, again, leave: left }) {
	if (quick) {
		deduct("", [["quick", quick]], spoken(button, state.row));
	}
	else if (back) {
		deduct("/back", [["index", back]], button.textContent.trim());
	}
	else if (seen !== undefined) {
		deduct("/seen", [], button.textContent.trim());
	}
	else if (again !== undefined || left !== undefined) {
		decide(again !== undefined);
	}
}

/* Only now can the field be typed into: a key before this would be lost. */
function listen() {
	field.disabled = false;
	if (document.activeElement === document.body) {
		field.focus();
	}
}

if (find) {
	find.addEventListener("submit", (event) => event.preventDefault());
	field.addEventListener("keydown", onFind);
	document.addEventListener("click", onClick);
	document.addEventListener("keydown", onAnywhere);
	part("read-back").addEventListener("click", onReadBack);
	listen();
}
document.addEventListener("keydown", onList);
drawDesk(state);
if (find) {
	transport.resume();
}
transport.follow();
