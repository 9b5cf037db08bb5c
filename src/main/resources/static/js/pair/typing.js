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
	return { ...typed, at, last: at };
}

/*
 * Answers what is typed then, or why the key was refused. Keys are "0" to "9", "." and "erase"; takesZero
 * is false where 0.0 means "not skated".
 */
export function press(typed, key, takesZero = true) {
	if (key === "erase") {
		return { typed: erase(typed) };
	}
	if (typed.at === "send") {
		return { typed, refusal: "choose" };
	}
	const before = isWhole(typed[typed.at]) ? "" : typed[typed.at];
	const after = extend(before, key, takesZero);
	return after.refusal ? { typed, refusal: after.refusal } : { typed: moveOn({ ...typed, [typed.at]: after.mark, last: typed.at }) };
}

/* Takes back the digit that was typed last, then those before it; a mark that is empty is left for the other. */
function erase(typed) {
	const last = typed.last ?? (typed.at === "send" ? "second" : typed.at);
	const at = typed[last] === "" ? other(last) : last;
	if (typed[at] === "") {
		return NOTHING_TYPED;
	}
	return { ...typed, at, last: at, [at]: typed[at].replace(/\.?.$/, "") };
}

function other(mark) {
	return mark === "first" ? "second" : "first";
}

function extend(mark, key, takesZero) {
	if (key === ".") {
		return mark === "" ? { refusal: "whole-first" } : { mark: mark.charAt(0) + "." };
	}
	if (mark === "") {
		return key > "6" ? { refusal: "above-six" } : { mark: key };
	}
	const whole = mark.charAt(0) + "." + key;
	if (whole === "0.0" && !takesZero) {
		return { refusal: "not-skated" };
	}
	return isWhole(whole) ? { mark: whole } : { refusal: "above-six" };
}

function moveOn(typed) {
	if (!isWhole(typed[typed.at])) {
		return typed;
	}
	const next = other(typed.at);
	return { ...typed, at: isWhole(typed[next]) ? "send" : next };
}
