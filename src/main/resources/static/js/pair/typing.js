/*
 * How two marks are typed. Text is kept as typed, so that a half-typed "5." survives; nothing here
 * touches the page. "56" and "5.6" are the same mark; a whole mark moves on to what is still missing.
 */

export const NOTHING_TYPED = Object.freeze({ first: "", second: "", at: "first" });

export function isWhole(mark) {
	return /^[0-5]\.[0-9]$|^6\.0$/.test(mark);
}

export function isComplete(typed) {
	return isWhole(typed.first) && isWhole(typed.second);
}

/* "5.6" as 56: whole numbers compare exactly. */
export function tenths(mark) {
	return Number(mark.replace(".", ""));
}

export function fromNumber(mark) {
	return mark.toFixed(1);
}

export function choose(typed, at) {
	return { ...typed, at };
}

/* Answers what is typed then, or why the key was refused. Keys are "0" to "9", "." and "erase". */
export function press(typed, key) {
	if (key === "erase") {
		return { typed: erase(typed) };
	}
	if (typed.at === "send") {
		return { typed, refusal: "choose" };
	}
	const before = isWhole(typed[typed.at]) ? "" : typed[typed.at];
	const after = extend(before, key);
	return after.refusal ? { typed, refusal: after.refusal } : { typed: moveOn({ ...typed, [typed.at]: after.mark }) };
}

function erase(typed) {
	const at = typed.at === "send" ? "second" : typed.at;
	if (at === "second" && typed.second === "") {
		return { ...typed, at: "first" };
	}
	return { ...typed, at, [at]: typed[at].replace(/\.?.$/, "") };
}

function extend(mark, key) {
	if (key === ".") {
		return mark === "" ? { refusal: "whole-first" } : { mark: mark.charAt(0) + "." };
	}
	if (mark === "") {
		return key > "6" ? { refusal: "above-six" } : { mark: key };
	}
	const whole = mark.charAt(0) + "." + key;
	return isWhole(whole) ? { mark: whole } : { refusal: "above-six" };
}

function moveOn(typed) {
	if (!isWhole(typed[typed.at])) {
		return typed;
	}
	const other = typed.at === "first" ? "second" : "first";
	return { ...typed, at: isWhole(typed[other]) ? "send" : other };
}
