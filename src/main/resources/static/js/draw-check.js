/* Repeats a draw from the seed and the texts on the page and says whether every position agrees. */
const table = document.querySelector("table.draw");
const result = document.getElementById("repeat-result");

function ticket(row) {
	return sha256(row.dataset.digested);
}

/* A text of another draw would agree with its own ticket. */
function isOfThisDraw(row) {
	const beginning = [table.dataset.seed, table.dataset.segment, ""].join("|").normalize("NFC");
	return row.dataset.digested.startsWith(beginning);
}

/* The lists inside which tickets must ascend: the whole field, or each group of it. */
function draws() {
	const groups = Array.from(table.tBodies, (body) => Array.from(body.querySelectorAll("tr[data-ticket]")));
	return (table.dataset.method === "WHOLE_FIELD") ? [groups.flat()] : groups;
}

function positionAgrees(rows, at) {
	if (table.dataset.method === "REVERSE_STANDING") {
		return true;
	}
	const lower = rows.filter((row) => ticket(row) < ticket(rows[at])).length;
	return lower === at;
}

function verdict(row, agrees) {
	const place = row.querySelector(".verdict");
	place.textContent = agrees ? result.dataset.same : result.dataset.other;
	place.className = "verdict state " + (agrees ? "signed" : "stop");
}

function repeat() {
	let wrong = 0;
	draws().forEach((rows) => rows.forEach((row, at) => {
		const agrees = isOfThisDraw(row) && ticket(row) === row.dataset.ticket && positionAgrees(rows, at);
		verdict(row, agrees);
		wrong += agrees ? 0 : 1;
	}));
	const { differs, differsOne } = result.dataset;
	const whole = table.dataset.method === "WHOLE_FIELD";
	const sentence = whole ? result.dataset.agrees : result.dataset.agreesStanding;
	result.className = "state wraps " + (wrong === 0 ? "signed" : "stop");
	result.textContent = wrong === 0 ? sentence : (wrong === 1 ? differsOne : differs).replace("#", String(wrong));
}

document.querySelector(".check").hidden = false;
document.getElementById("repeat-draw").addEventListener("click", repeat);
