/* What the tablet asks of the service, in words that the card understands. */

const PATIENCE = 8000;

/* Resolves to { outcome: "table", table }, { outcome: "seat-lost" } or { outcome: "unreachable" }. */
export async function fetchTable() {
	const answer = await ask("/api/judge/table", { method: "GET" });
	return answer.status === 200 ? { outcome: "table", table: answer.body } : { outcome: failure(answer) };
}

/* Send one card; see outbox.js for what it resolves to. */
export async function deliver(card) {
	const answer = await ask("/api/cards/" + card.id, { method: "PUT", body: body(card) });
	if (answer.status === 200) {
		return { outcome: "received", receivedAt: answer.body.receivedAt };
	}
	return isRefusal(answer) ? { outcome: "refused", sentence: answer.body.detail } : { outcome: failure(answer) };
}

function body({ performance, sequence, first, second }) {
	return JSON.stringify({ performance, sequence, first: first / 10, second: second / 10 });
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
