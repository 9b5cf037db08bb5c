/* What the tablet asks of the service, in words that the card understands. */

const PATIENCE = 8000;

/* How each kind of thing in the outbox is told. */
const TOLD = {
	pair: { path: ({ id }) => "/api/cards/" + id, body: pair },
	points: { path: ({ id }) => "/api/points-cards/" + id, body: points },
	seen: { path: ({ remark }) => "/api/judge/remarks/" + remark + "/seen", body: () => ({}) },
};

/*
 * Look at the table and say how many cards wait here. Resolves to { outcome: "table", table },
 * { outcome: "seat-lost" } or { outcome: "unreachable" }.
 */
export async function fetchTable(waiting) {
	const answer = await ask("/api/judge/table?waiting=" + waiting, { method: "GET" });
	return answer.status === 200 ? { outcome: "table", table: answer.body } : { outcome: failure(answer) };
}

/* The seat's own cards of the segment in points judging; undefined if they cannot be had now. */
export async function fetchOwnCards() {
	const answer = await ask("/api/judge/cards", { method: "GET" });
	return answer.status === 200 ? answer.body : undefined;
}

/* Send one thing; see outbox.js for what it resolves to. */
export async function deliver(thing) {
	const { path, body } = TOLD[thing.kind ?? "pair"];
	const answer = await ask(path(thing), { method: "PUT", body: JSON.stringify(body(thing)) });
	if (answer.status === 200) {
		return { outcome: "received", receivedAt: answer.body.receivedAt ?? answer.body.seenAt };
	}
	if (!isRefusal(answer)) {
		return { outcome: failure(answer) };
	}
	const sentence = answer.body.detail;
	return answer.body.received ? { outcome: "differs", sentence, received: answer.body.received } : { outcome: "refused", sentence };
}

function pair({ performance, sequence, first, second }) {
	return { performance, sequence, first: first / 10, second: second / 10 };
}

function points({ performance, sequence, listSequence, grades, components }) {
	const marks = Object.entries(components).map(([name, mark]) => [name, Number(mark)]);
	return { performance, sequence, listSequence, grades, components: Object.fromEntries(marks) };
}

async function ask(path, request) {
	const stop = new AbortController();
	const timer = setTimeout(() => stop.abort(), PATIENCE);
	try {
		const headers = { "Accept": "application/json", "Content-Type": "application/json" };
		const response = await fetch(path, { ...request, headers, cache: "no-store", signal: stop.signal });
		return { status: response.status, body: await response.json() };
	}
	catch (unreachable) {
		return { status: 0 };
	}
	finally {
		clearTimeout(timer);
	}
}

/* Only a refusal in the service's own words is final; anything else may come from the network between. */
function isRefusal(answer) {
	return [400, 404, 409, 415, 422].includes(answer.status) && Boolean(answer.body.code);
}

function failure(answer) {
	return answer.status === 401 || answer.status === 403 ? "seat-lost" : "unreachable";
}
