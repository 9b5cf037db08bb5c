/*
 * The music desk. The list comes from the service and is exchanged when it says something else; what plays, and what is
 * loaded, stays. Nothing waits for the network once a file is loaded.
 */
import { newId } from "../card/ids.js";
import { Loaded } from "./loaded.js";
import { after, before, first, time } from "./order.js";
import { others, Played } from "./played.js";

const LOOK = 10000;

/* The list as the service sent it, without what is another in each answer. */
function plain(list) {
	const copy = list.cloneNode(true);
	copy.querySelectorAll("[name=_csrf], [name=formToken]").forEach((field) => field.removeAttribute("value"));
	return copy;
}

export function openDesk(main) {
	const deck = main.querySelector(".deck");
	const part = (id) => document.getElementById(id);
	const audio = new Audio();
	let chosen;
	let address;
	let failed = false;
	let byHand = false;
	let seen = plain(part("lines"));

	const rows = () => Array.from(part("lines").querySelectorAll("tbody tr"));
	const lines = () => rows().map(({ dataset }) => ({ ...dataset, bytes: Number(dataset.bytes) }));
	const line = () => lines().find(({ entry }) => entry === chosen);
	const isPlaying = () => !audio.paused && !audio.ended;

	const loaded = new Loaded(async ({ file }) => {
		const answer = await fetch(file);
		if (!answer.ok) {
			throw new Error("refused");
		}
		return answer.blob();
	}, draw);

	/* The token against foreign sites is that of the newest list, so that it fits after a new sign-in. */
	async function tell(one) {
		const form = part("played");
		const body = new URLSearchParams(new FormData(form));
		body.delete("formToken");
		body.set("play", one.id);
		body.set("version", one.version);
		body.set("startedAt", one.startedAt);
		const answer = await fetch(form.action, { method: "POST", body, redirect: "manual" });
		return answer.status === 204 ? "noted" : ([400, 404, 409, 422].includes(answer.status) ? "refused" : "not now");
	}

	const played = new Played(localStorage, main.dataset.key, tell, draw);
	/* A desk that was left before the network was back; the file says whose it is. */
	const left = others(localStorage, main.dataset.key).map((key) => new Played(localStorage, key, tell, draw));
	const outboxes = [played, ...left];

	function name({ number, team }) {
		return Number(number) > 0 ? deck.dataset.of.replace("{0}", number).replace("{1}", team) : team;
	}

	function say(id, words) {
		part(id).textContent = words;
		part(id).hidden = words === "";
	}

	function drawDeck() {
		const now = line();
		const ready = now !== undefined && loaded.has(now.version);
		const state = isPlaying() ? "playing" : (failed ? "failed" : "ready");
		deck.dataset.state = state;
		part("deck-state").textContent = now ? deck.dataset[state] : "";
		part("deck-state").className = `state ${{ playing: "now", failed: "stop", ready: ready ? "signed" : "waiting" }[state]}`;
		part("deck-team").textContent = now ? name(now) : deck.dataset.nothing;
		part("deck-time").textContent = now ? `${time(audio.src ? audio.currentTime : 0)} / ${now.length}` : "";
		part("deck-progress").value = audio.duration > 0 && Number.isFinite(audio.duration) ? audio.currentTime / audio.duration : 0;
		part("play").disabled = !ready || isPlaying();
		part("stop").disabled = !isPlaying();
		const next = now && after(lines(), chosen);
		say("deck-next", next ? deck.dataset.next.replace("#", name(next)) : "");
	}

	function drawRows() {
		rows().forEach((row) => {
			const { version, entry } = row.dataset;
			row.toggleAttribute("aria-current", entry === chosen);
			const mark = row.querySelector(".load");
			if (version && mark) {
				mark.hidden = false;
				mark.textContent = loaded.has(version) ? mark.dataset.loaded : mark.dataset.loading;
				mark.classList.toggle("signed", loaded.has(version));
				row.querySelector(".choose").hidden = false;
				row.querySelector(".choose").disabled = isPlaying() || entry === chosen;
			}
		});
	}

	function drawFacts() {
		const all = loaded.wanted.length;
		const count = loaded.count();
		const { dataset, classList } = part("loaded");
		const words = all === 0 ? dataset.none : (count === all ? dataset.all : dataset.some);
		say("loaded", words.replace("#", count).replace("#", all));
		classList.toggle("signed", all > 0 && count === all);
		classList.toggle("waiting", count < all);
		const { waiting, refused } = part("untold").dataset;
		say("untold", [[outboxes.flatMap((one) => one.waiting()), waiting], [played.refused(), refused]].filter(([plays]) => plays.length > 0)
			.map(([plays, sentence]) => sentence.replace("#", plays.length)).join(" "));
	}

	function draw() {
		drawRows();
		drawDeck();
		drawFacts();
	}

	function choose(entry) {
		if (isPlaying() || !entry) {
			return;
		}
		chosen = entry;
		failed = false;
		if (address) {
			URL.revokeObjectURL(address);
			address = undefined;
			audio.removeAttribute("src");
		}
		draw();
	}

	async function play() {
		const now = line();
		if (isPlaying() || !now || !loaded.has(now.version)) {
			return;
		}
		if (address) {
			URL.revokeObjectURL(address);
		}
		address = URL.createObjectURL(loaded.blob(now.version));
		audio.src = address;
		const startedAt = new Date().toISOString();
		byHand = true;
		try {
			await audio.play();
			failed = false;
			played.put({ id: newId(), version: now.version, startedAt });
		}
		catch {
			failed = true;
		}
		draw();
	}

	/* Stopped by hand it stays ready, since it may begin anew; after its end the next one is. */
	function stop() {
		audio.pause();
		audio.currentTime = 0;
		draw();
	}

	audio.addEventListener("ended", () => {
		choose(after(lines(), chosen)?.entry);
		draw();
	});
	audio.addEventListener("timeupdate", drawDeck);
	audio.addEventListener("pause", draw);

	/* Until somebody chose or played one here, the next that nobody has played is ready, whatever is drawn anew. */
	function keepList() {
		loaded.want(lines().filter(({ version }) => version));
		if (!isPlaying() && (!byHand || !line()?.version)) {
			choose(first(lines())?.entry);
		}
		draw();
	}

	function chooseByHand(entry) {
		byHand = true;
		choose(entry);
	}

	async function look() {
		try {
			const answer = await fetch(main.dataset.lines, { redirect: "manual" });
			say("network", answer.ok ? "" : part("network").dataset.signedOut);
			if (answer.ok) {
				exchange(await answer.text());
			}
		}
		catch {
			say("network", part("network").dataset.gone);
			return;
		}
		outboxes.forEach((one) => one.flush());
		loaded.load();
	}

	/* Where somebody is in the middle of it, the focus stays on what has the same name. */
	function exchange(text) {
		const next = new DOMParser().parseFromString(text, "text/html").getElementById("lines");
		if (plain(next).isEqualNode(seen)) {
			part("played").replaceWith(next.querySelector("#played"));
			return;
		}
		seen = plain(next);
		const held = document.activeElement?.closest("#lines tr")?.dataset.entry;
		part("lines").replaceWith(next);
		keepList();
		if (held) {
			rows().find(({ dataset }) => dataset.entry === held)?.querySelector("button:not(:disabled), a")?.focus();
		}
	}

	document.addEventListener("click", (event) => {
		if (event.target.closest(".choose")) {
			chooseByHand(event.target.closest("tr").dataset.entry);
			part("play").focus();
		}
	});
	part("play").addEventListener("click", play);
	part("stop").addEventListener("click", stop);
	document.addEventListener("keydown", (event) => {
		// The blank bar already presses a button that has the focus.
		const own = event.target.closest?.(event.key === " " ? "input, select, textarea, audio, button, a" : "input, select, textarea, audio");
		const act = { Escape: stop, " ": play, ArrowDown: () => chooseByHand(after(lines(), chosen)?.entry),
			ArrowUp: () => chooseByHand(before(lines(), chosen)?.entry) }[event.key];
		if (act && !own && !event.ctrlKey && !event.altKey && !event.metaKey) {
			event.preventDefault();
			act();
		}
	});
	/* What is loaded goes with the page. */
	window.addEventListener("beforeunload", (event) => (isPlaying() || !part("network").hidden) && event.preventDefault());
	window.addEventListener("online", look);

	deck.hidden = false;
	keepList();
	look();
	setInterval(look, LOOK);
}
