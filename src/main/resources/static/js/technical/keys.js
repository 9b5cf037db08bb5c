/*
 * What a key of the technical desk is for, as { does, … }; nothing for a key that the desk leaves to the browser.
 * Nothing here touches the page.
 */
const LEVELS = { KeyB: "B", Digit1: "1", Digit2: "2", Digit3: "3", Digit4: "4", Numpad1: "1", Numpad2: "2", Numpad3: "3", Numpad4: "4" };
const NO_PART = ["Digit0", "Numpad0"];
const ACTS = { d: "DOWNGRADE", r: "REVIEW", x: "NO_VALUE", m: "TOO_MANY", e: "EARLIER", l: "LATER", u: "UNDO", delete: "REMOVE", backspace: "REMOVE" };
const MOVES = { ArrowDown: 1, ArrowUp: -1 };
const OTHERS = {
	c: { does: "begin", mode: "change" },
	i: { does: "begin", mode: "insert" },
	n: { does: "next" },
	g: { does: "readBack" },
	"/": { does: "find" },
	escape: { does: "find" },
};

/* From wherever the hands are. */
export function isOnward({ key, ctrlKey, metaKey }) {
	return key === "Enter" && (ctrlKey || metaKey);
}

/* In the called list: a bare level is the element's, with Shift the additional part's. */
export function listKey({ key: typed, code, shiftKey, ctrlKey, metaKey, altKey }) {
	if (ctrlKey || metaKey || altKey) {
		return undefined;
	}
	if (typed in MOVES) {
		return { does: "move", by: MOVES[typed] };
	}
	if (code in LEVELS) {
		return { does: "tool", act: shiftKey ? "PART" : "LEVEL", value: LEVELS[code] };
	}
	if (NO_PART.includes(code) && shiftKey) {
		return { does: "tool", act: "PART", value: "" };
	}
	const key = typed.toLowerCase();
	if (key === "f") {
		return { does: "fall", quick: shiftKey ? "MORE_FALLS" : "ONE_FALL" };
	}
	return key in ACTS && !shiftKey ? { does: "tool", act: ACTS[key] } : OTHERS[key];
}

/*
 * In the search field: Enter calls only a code that was typed in full or chosen with the arrows. In an empty field
 * it calls what is planned next, once however long it is held; Escape goes back step by step, at last to the list.
 */
export function findKey(event, { code, empty, mode }) {
	if (isOnward(event)) {
		return undefined;
	}
	if (event.key in MOVES) {
		return arrow(MOVES[event.key], empty);
	}
	switch (event.key) {
		case "Enter": return enter(event, { code, empty, mode });
		case "Escape": return back(empty, mode);
		default: return undefined;
	}
}

function enter({ repeat }, { code, empty, mode }) {
	if (code) {
		return { does: "take", code };
	}
	if (!empty) {
		return { does: "refuse" };
	}
	return { does: mode === "call" && !repeat ? "next" : "nothing" };
}

function arrow(by, empty) {
	if (!empty) {
		return { does: "look", by };
	}
	return { does: by < 0 ? "last" : "nothing" };
}

function back(empty, mode) {
	if (!empty) {
		return { does: "clear" };
	}
	return { does: mode === "call" ? "list" : "leave" };
}
