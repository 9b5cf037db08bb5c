/*
 * Between the desk and the service. What is called goes out at once, one act after the other, and comes back as
 * the list that counts; in between the page is looked at once a second, so that it follows a second desk.
 *
 * The page is { prints(), token(), sequenceOf(list), show(html), answered(html, refused), failed(acts),
 * waiting(number), contact(isThere), signIn() }.
 */
import { Outgoing } from "./outgoing.js";

const LOOK_EVERY = 1000;
const LONGEST_SILENCE = 5000;
const SIGNED_OUT = [401, 403];
const REFUSED = [409, 422];

export class Transport {

	#path;

	#page;

	#outgoing;

	#heard = Date.now();

	#sent = 0;

	constructor(path, kept, page) {
		this.#path = path;
		this.#page = page;
		this.#outgoing = new Outgoing((act) => this.#send(act), (number) => page.waiting(number), kept);
	}

	get busy() {
		return this.#outgoing.busy;
	}

	/* An act is { list, to, performance, fields, words }: words say it to whoever called, should it be refused. */
	add(act) {
		this.#outgoing.add(act);
	}

	/* What was refused, decided once more on the list that is shown now. */
	addAgain(acts) {
		acts.forEach((act) => this.add({ ...act, sequence: undefined }));
	}

	/* Send what waited when the page was left. */
	resume() {
		if (this.busy) {
			this.#outgoing.go();
		}
	}

	follow() {
		setTimeout(async () => {
			await this.#look();
			this.follow();
		}, LOOK_EVERY);
	}

	/* An answer that was asked for before something was sent is older than what the sending brought. */
	async #look() {
		const before = this.#sent;
		try {
			const answer = await fetch(this.#path + "/live?" + new URLSearchParams(this.#page.prints()), { redirect: "manual" });
			if (answer.ok) {
				this.#heard = Date.now();
			}
			if (answer.status === 200 && before === this.#sent && !this.busy) {
				this.#page.show(await answer.text());
			}
		}
		catch {
			// No contact: the strip says so, and the next look comes by itself.
		}
		this.#page.contact(Date.now() - this.#heard < LONGEST_SILENCE);
	}

	/* Tells whether there was an answer. */
	async #send(act) {
		this.#sent++;
		act.sequence ??= this.#page.sequenceOf(act.list);
		this.#outgoing.keep();
		const { answer, html } = await this.#post(act);
		if (!answer || answer.status >= 500) {
			return false;
		}
		this.#heard = Date.now();
		if (answer.type === "opaqueredirect" || SIGNED_OUT.includes(answer.status)) {
			return this.#signedOut();
		}
		this.#tell(act, answer, html);
		return true;
	}

	/*
	 * A refusal says why, beside the list. Any other answer than the list is about the sending itself, and would be
	 * the same again: what was called is not done, nor what was called behind it on a list that never came.
	 */
	#tell(act, answer, html) {
		if (answer.ok) {
			this.#page.answered(html, []);
			return;
		}
		const notDone = [act, ...this.#outgoing.clear()];
		if (REFUSED.includes(answer.status)) {
			this.#page.answered(html, notDone);
		}
		else {
			this.#page.failed(notDone);
		}
	}

	/* The act is kept, and sent once somebody has signed in again: nothing more goes out from this page. */
	#signedOut() {
		this.#page.signIn();
		return new Promise(() => {});
	}

	async #post({ performance, sequence, fields, to }) {
		const all = [["performance", performance], ["sequence", sequence], ...fields, ...this.#page.prints(), ["_csrf", this.#page.token()]];
		try {
			const answer = await fetch(this.#path + to, { method: "POST", body: new URLSearchParams(all), redirect: "manual" });
			return { answer, html: await answer.text() };
		}
		catch {
			return {};
		}
	}

}
