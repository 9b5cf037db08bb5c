/*
 * Acts go out one after the other, each resting on the version that the page shows when it is sent. One that
 * has no answer is sent again as it was until it has one, also after a reload: the service does it once.
 */
const TRY_AGAIN = 1000;

export class Outgoing {

	#waiting;

	#busy = false;

	#send;

	#told;

	#kept;

	/*
	 * send(act) answers whether there was an answer; told(number) hears how many acts wait; kept has those that
	 * waited when the page was left.
	 */
	constructor(send, told, kept) {
		this.#send = send;
		this.#told = told;
		this.#kept = kept;
		this.#waiting = kept.read();
	}

	get busy() {
		return this.#waiting.length > 0;
	}

	add(act) {
		this.#waiting.push(act);
		this.go();
	}

	/* Keep what waits, as it is about to be sent. */
	keep() {
		this.#kept.write(this.#waiting);
	}

	/* What waits behind a refused act was decided on another list. */
	clear() {
		return this.#waiting.splice(1);
	}

	go() {
		this.#changed();
		if (!this.#busy) {
			this.#work();
		}
	}

	#changed() {
		this.keep();
		this.#told(this.#waiting.length);
	}

	/* Whatever goes wrong in between, the next that is called goes out again. */
	async #work() {
		this.#busy = true;
		try {
			while (this.#waiting.length > 0) {
				if (await this.#send(this.#waiting[0])) {
					this.#waiting.shift();
				}
				else {
					await new Promise((resolve) => setTimeout(resolve, TRY_AGAIN));
				}
				this.#changed();
			}
		}
		finally {
			this.#busy = false;
		}
	}

}
