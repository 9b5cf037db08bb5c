/*
 * Repeats a draw from the seed and the texts on the page and says whether every position agrees. What it looks at is looked
 * up each time, since a page that follows exchanges it.
 */
const drawn = () => document.querySelector("table.draw");
const said = () => document.getElementById("repeat-result");

function ticket(row) {
	return sha256(row.dataset.digested);
}

/* A text of another draw would agree with its own ticket. */
function isOfThisDraw(row) {
	const { seed, segment } = drawn().dataset;
	return row.dataset.digested.startsWith([seed, segment, ""].join("|").normalize("NFC"));
}

/*
 * The lists inside which tickets must ascend: the whole field, or each group of it. Who came after the draw has a ticket that
 * decided nothing.
 */
function draws() {
	const groups = Array.from(drawn().tBodies, (body) => Array.from(body.querySelectorAll("tr[data-ticket]:not([data-added])")));
	return (drawn().dataset.method === "WHOLE_FIELD") ? [groups.flat()] : groups;
}

function positionAgrees(rows, at) {
	if (drawn().dataset.method === "REVERSE_STANDING") {
		return true;
	}
	const lower = rows.filter((row) => ticket(row) < ticket(rows[at])).length;
	return lower === at;
}

function verdict(row, agrees) {
	const place = row.querySelector(".verdict");
	place.textContent = agrees ? said().dataset.same : said().dataset.other;
	place.className = "verdict state " + (agrees ? "signed" : "stop");
}

function repeat() {
	let wrong = 0;
	drawn().querySelectorAll("tr[data-added]").forEach((row) => (row.querySelector(".verdict").textContent = said().dataset.added));
	draws().forEach((rows) => rows.forEach((row, at) => {
		const agrees = isOfThisDraw(row) && ticket(row) === row.dataset.ticket && positionAgrees(rows, at);
		verdict(row, agrees);
		wrong += agrees ? 0 : 1;
	}));
	const result = said();
	const { differs, differsOne } = result.dataset;
	const whole = drawn().dataset.method === "WHOLE_FIELD";
	const sentence = whole ? result.dataset.agrees : result.dataset.agreesStanding;
	result.className = "state wraps " + (wrong === 0 ? "signed" : "stop");
	result.textContent = wrong === 0 ? sentence : (wrong === 1 ? differsOne : differs).replace("#", String(wrong));
}

const offer = () => document.querySelectorAll(".check").forEach((check) => (check.hidden = false));
offer();
document.addEventListener("exchanged", offer);
document.addEventListener("click", (event) => event.target.closest("#repeat-draw") && repeat());
