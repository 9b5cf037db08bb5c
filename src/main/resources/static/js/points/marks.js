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

/*
 * Answers the text then, or why the key was refused. Touched are "w0" to "w10" for the whole and "f00" to
 * "f75" for the quarter; typed are "0" to "9", "." and "erase".
 */
export function pressMark(text, key) {
	if (key === "erase") {
		return { text: isMark(text) ? whole(text) + "." : text.replace(/\.?.$/, "") };
	}
	if (key.startsWith("w")) {
		return { text: key === "w10" ? "10.00" : key.slice(1) + "." };
	}
	if (key.startsWith("f")) {
		return text === "" ? { refusal: "whole-first" } : checked(whole(text) + "." + key.slice(1));
	}
	return typeMark(isMark(text) ? "" : text, key);
}

function whole(text) {
	return text.split(".")[0];
}

function typeMark(text, key) {
	if (key === ".") {
		return text === "" ? { refusal: "whole-first" } : { text: whole(text) + "." };
	}
	if (text === "") {
		return { text: key };
	}
	if (text === "1" && key === "0") {
		return { text: "10.00" };
	}
	const quarter = (text.split(".")[1] ?? "") + key;
	if (!QUARTERS.some((full) => full.startsWith(quarter))) {
		return { refusal: "quarter" };
	}
	const longer = whole(text) + "." + quarter;
	return quarter.length === 2 ? checked(longer) : { text: longer };
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

/* A quarter more or less; undefined beyond the ends. */
export function stepped(text, by) {
	const mark = fromNumber(Number(text) + by / 4);
	return isMark(text) && isMark(mark) ? mark : undefined;
}
