/*
 * Acts go out one after the other, each resting on the version that the page shows when it is sent. One that
 * has no answer is sent again as it was until it has one: the service does it once.
 */
const TRY_AGAIN = 1000;

export class Outgoing {

	#waiting = [];

	#busy = false;

	#send;

	#told;

	/* send(act) answers whether there was an answer; told(number) hears how many acts wait. */
	constructor(send, told) {
		this.#send = send;
		this.#told = told;
	}

	get busy() {
		return this.#waiting.length > 0;
	}

	add(act) {
		this.#waiting.push(act);
		this.#told(this.#waiting.length);
		if (!this.#busy) {
			this.#work();
		}
	}

	/* What waits behind a refused act was decided on another list. */
	clear() {
		return this.#waiting.splice(1);
	}

	async #work() {
		this.#busy = true;
		while (this.#waiting.length > 0) {
			if (await this.#send(this.#waiting[0])) {
				this.#waiting.shift();
			}
			else {
				await new Promise((resolve) => setTimeout(resolve, TRY_AGAIN));
			}
			this.#told(this.#waiting.length);
		}
		this.#busy = false;
	}

}
