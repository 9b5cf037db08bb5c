/*
 * Hears of a competition's signals: on a stream while the server has one to give, else by asking for
 * where everything stands every few seconds. When nothing at all was heard for a while (a proxy may
 * swallow a stream without ending it) the page begins anew and says so.
 */

const LOST_FOR = 4000; // A connection that is back sooner was hardly gone.
const LOOK_TIMEOUT = 10000;
const LOOK_AGAIN = [1.5, 3, 5]; // Seconds, after a first look in vain, a second, and more.
const NO_STREAM_FOR = 300000; // After a stream that fell silent.

/*
 * options: signals and moments are addresses, quiet is milliseconds; part(html), moved(signal), alive(within),
 * adrift(gone) and silent() are told.
 */
export function keepContact(options) {
	let stream = null;
	let looks = 0;
	let inVain = 0;
	let nextLook = null;
	let tag = null;
	let heardAt = Date.now();
	let beganAt = Date.now();
	let lostAt = null;
	let streamsFrom = 0;

	function heard() {
		heardAt = Date.now();
		lostAt = null;
		options.adrift(false);
	}

	function lost() {
		lostAt ??= Date.now();
	}

	function listen() {
		stream?.close();
		const mine = new EventSource(options.signals);
		stream = mine;
		const hear = (what) => (event) => {
			stopLooking();
			heard();
			what(JSON.parse(event.data));
		};
		mine.addEventListener("moved", hear(options.moved));
		mine.addEventListener("part", (event) => {
			heard();
			options.part(event.data);
		});
		mine.addEventListener("alive", hear((sign) => options.alive(sign.within)));
		mine.addEventListener("error", () => {
			lost();
			if (mine === stream && mine.readyState === EventSource.CLOSED) {
				stream = null;
				look();
			}
		});
	}

	function stopLooking() {
		looks++;
		window.clearTimeout(nextLook);
	}

	async function look() {
		stopLooking();
		const mine = looks;
		let wait = LOOK_AGAIN[Math.min(inVain++, LOOK_AGAIN.length - 1)];
		try {
			const answer = await ask();
			wait = Number(answer.headers.get("Rink-Wait") ?? answer.headers.get("Retry-After")) || wait;
			if (answer.status === 200) {
				tag = answer.headers.get("ETag");
				(await answer.json()).moments.forEach(options.moved);
			}
			if (answer.status === 200 || answer.status === 304) {
				inVain = 0;
				heard();
				tryStream(answer.headers.get("Rink-Streams") === "open");
			}
			else {
				lost();
			}
		}
		catch {
			lost();
		}
		if (looks === mine) {
			nextLook = window.setTimeout(look, wait * 1000 * (0.8 + 0.4 * Math.random()));
		}
	}

	/** Of all that are told of room one in four tries, or more would come than there is room for. */
	function tryStream(room) {
		if (room && !stream && Date.now() > streamsFrom && Math.random() < 0.25) {
			listen();
		}
	}

	async function ask() {
		const patience = new AbortController();
		const timer = window.setTimeout(() => patience.abort(), Math.min(LOOK_TIMEOUT, options.quiet));
		try {
			return await fetch(options.moments, { cache: "no-store", headers: tag ? { "If-None-Match": tag } : {}, signal: patience.signal });
		}
		finally {
			window.clearTimeout(timer);
		}
	}

	function beginAnew() {
		beganAt = Date.now();
		if (stream) {
			stream.close();
			stream = null;
			streamsFrom = Date.now() + NO_STREAM_FOR;
		}
		look();
		options.silent();
	}

	function watch() {
		const now = Date.now();
		if (now - heardAt > options.quiet) {
			options.adrift(true);
			if (now - Math.max(heardAt, beganAt) > options.quiet) {
				beginAnew();
			}
		}
		else if (lostAt && now - lostAt > LOST_FOR) {
			options.adrift(true);
		}
	}

	/** A device that slept, or was without network, may hold a connection that is none. */
	function wake() {
		const slept = Date.now() - heardAt > options.quiet / 2;
		if (slept && stream) {
			listen();
		}
		look();
	}

	document.addEventListener("visibilitychange", () => document.hidden || wake());
	window.addEventListener("online", wake);
	window.addEventListener("pageshow", (event) => event.persisted && wake());
	window.addEventListener("offline", () => options.adrift(true));
	window.setInterval(watch, Math.min(1000, options.quiet / 10));
	listen();
}
