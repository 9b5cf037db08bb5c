/*
 * How grades and the marks of components are typed. A mark is kept as the text typed so far ("", "1", "7.",
 * "7.2", "7.25"), so that it survives half-typed; nothing here touches the page.
 */

const QUARTERS = ["00", "25", "50", "75"];

export function isMark(text) {
	return /^([1-9]\.(00|25|50|75)|0\.(25|50|75)|10\.00)$/.test(text);
}

export function fromNumber(mark) {
	return mark.toFixed(2);
}

export function signed(grade) {
	return grade > 0 ? "+" + grade : grade < 0 ? "−" + -grade : "0";
}

/* The mark of a whole number that is touched; below 1 it is the lowest mark there is. */
export function wholeMark(figure) {
	return figure === "0" ? "0.25" : figure + ".00";
}

/* Answers the text after a typed "0" to "9", "." or "erase", or why the key was refused. */
export function typeMark(before, key) {
	if (key === "erase") {
		return { text: before.replace(/\.?.$/, "") };
	}
	const text = isMark(before) ? "" : before;
	if (key === ".") {
		return text === "" ? { refusal: "whole-first" } : { text: whole(text) + "." };
	}
	if (text === "") {
		return { text: key };
	}
	if (text === "1" && key === "0") {
		return { text: "10.00" };
	}
	return typeQuarter(text, key);
}

function typeQuarter(text, key) {
	const quarter = (text.split(".")[1] ?? "") + key;
	if (!QUARTERS.some((full) => full.startsWith(quarter))) {
		return { refusal: "quarter" };
	}
	const longer = whole(text) + "." + quarter;
	return quarter.length === 2 ? checked(longer) : { text: longer };
}

function whole(text) {
	return text.split(".")[0];
}

function checked(text) {
	return isMark(text) ? { text } : { refusal: text === "0.00" ? "no-zero" : "above-ten" };
}

/* "7" and "7." as 7.00, "7.5" as 7.50; undefined where nothing can be made of it. */
export function finished(text) {
	const quarter = QUARTERS.find((full) => text !== "" && full.startsWith(text.split(".")[1] ?? ""));
	const mark = quarter && whole(text) + "." + quarter;
	return mark && isMark(mark) ? mark : undefined;
}

/* The text so many quarters higher or lower, or why there is none. */
export function stepped(text, quarters) {
	const mark = finished(text);
	if (!mark) {
		return { refusal: "whole-first" };
	}
	const next = Number(mark) + quarters / 4;
	return next <= 0 ? { refusal: "no-zero" } : checked(fromNumber(next));
}
