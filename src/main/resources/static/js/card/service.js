/* What the tablet asks of the service, in words that the card understands. */

const LOOK_PATIENCE = 12000;

/* What is told may be answered late: it is told again beside the first telling, which stays open. */
const TELL_AGAIN_AFTER = 8000;
const TELL_PATIENCE = 30000;

/* One for each thing that is being told and was not answered: tells it once more. */
const tellings = new Set();

/* How each kind of thing in the outbox is told. */
const TOLD = {
	pair: { path: ({ id }) => "/api/cards/" + id, body: pair },
	points: { path: ({ id }) => "/api/points-cards/" + id, body: points },
	seen: { path: ({ remark }) => "/api/judge/remarks/" + remark + "/seen", body: () => ({}) },
};

/*
 * Look at the table and say how many cards wait here, whether this page has a fault and of which line of the
 * record an anchor is kept here. Resolves to { outcome: "table", table, lives }, { outcome: "seat-lost" } or
 * { outcome: "unreachable" }.
 */
export async function fetchTable(waiting, fault, record) {
	const answer = await ask("/api/judge/table?waiting=" + waiting + (fault ? "&fault=true" : "") + (record ? "&record=" + record : ""), { method: "GET" });
	return answer.status === 200 ? { outcome: "table", table: answer.body, lives: answer.lives } : { outcome: failure(answer) };
}

/* The seat's own cards of the segment in points judging; undefined if they cannot be had now. */
export async function fetchOwnCards() {
	const answer = await ask("/api/judge/cards", { method: "GET" });
	return answer.status === 200 ? answer.body : undefined;
}

/* Send one thing; see outbox.js for what it resolves to. */
export async function deliver(thing) {
	const { path, body } = TOLD[thing.kind ?? "pair"];
	const answer = await tell(path(thing), JSON.stringify(body(thing)), thing.life);
	if (answer.status === 200) {
		return { outcome: "received", receivedAt: answer.body.receivedAt ?? answer.body.seenAt, life: answer.lives[0] };
	}
	if (!isRefusal(answer)) {
		return { outcome: failure(answer) };
	}
	const sentence = answer.body.detail;
	if (isTooEarly(answer, thing)) {
		return { outcome: "too-early", sentence };
	}
	return answer.body.received ? { outcome: "differs", sentence, received: answer.body.received } : { outcome: "refused", sentence };
}

function pair({ performance, sequence, first, second, returned }) {
	return { performance, sequence, first: first / 10, second: second / 10, returned };
}

function points({ performance, sequence, listSequence, grades, components, returned }) {
	const marks = Object.entries(components).map(([name, mark]) => [name, Number(mark)]);
	return { performance, sequence, listSequence, grades, components: Object.fromEntries(marks), returned };
}

/* The service answers again: what was told to the one that died, and may hang for half a minute, is told once more now. */
export function tellAgain() {
	tellings.forEach((once) => once());
}

/*
 * Resolves with the first answer; a telling that fails is the answer only if no other is open. life is that of the
 * service for which the thing was put down: any other refuses it.
 */
function tell(path, body, life) {
	return new Promise((resolve) => {
		let open = 0;
		const again = setTimeout(once, TELL_AGAIN_AFTER);
		tellings.add(once);
		async function once() {
			open++;
			const answer = await ask(path, { method: "PUT", body, headers: life ? { "Rimebook-Life": life } : {} }, TELL_PATIENCE);
			open--;
			if (answer.status !== 0 || open === 0) {
				clearTimeout(again);
				tellings.delete(once);
				resolve(answer);
			}
		}
		once();
	});
}

async function ask(path, request, patience = LOOK_PATIENCE) {
	const stop = new AbortController();
	const timer = setTimeout(() => stop.abort(), patience);
	try {
		const headers = { "Accept": "application/json", "Content-Type": "application/json", ...request.headers };
		const response = await fetch(path, { ...request, headers, cache: "no-store", signal: stop.signal });
		return { status: response.status, lives: lives(response), body: await response.json() };
	}
	catch {
		return { status: 0 };
	}
	finally {
		clearTimeout(timer);
	}
}

/* The life of the service that answers, then those before it: each began from a copy of the one before. */
function lives(response) {
	return (response.headers.get("Rimebook-Life") ?? "").split(" ").filter(Boolean);
}

/* A card from before the service went back, for a team that it does not know to be on the ice yet. */
function isTooEarly(answer, { life, returned }) {
	return !returned && answer.body.code === "performance-not-open" && answer.lives.slice(1).includes(life);
}

/* Only a refusal in the service's own words is final; anything else may come from the network between. */
function isRefusal(answer) {
	return [400, 404, 409, 415, 422].includes(answer.status) && Boolean(answer.body.code);
}

function failure(answer) {
	return answer.status === 401 || answer.status === 403 ? "seat-lost" : "unreachable";
}
