package rimebook.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.jspecify.annotations.Nullable;

/**
 * Pages that follow a competition as their script does, from one segment to the next: most
 * of them ask for a stream and poll where there is none for them, the others are where the
 * network lets no stream through. When a standing moved they fetch it, never two at once.
 */
final class Followers {

	private static final Pattern SIGNAL = Pattern.compile("\"id\":\"([^\"]+)\",\"moment\":(-?\\d+),\"version\":(\\d+)");

	private static final Pattern WITHIN = Pattern.compile("\"within\":(\\d+)");

	private static final Pattern RETRY = Pattern.compile("retry: (\\d+)");

	private static final Pattern WAIT = Pattern.compile("Rink-Wait: (\\d+)");

	private static final Pattern TAG = Pattern.compile("ETag: (\\S+)");

	private final Loopback crowd;

	private final String competition;

	private final List<Follower> all = new ArrayList<>();

	private final List<Seen> seen = new ArrayList<>();

	private final Random random = new Random(20270213);

	private volatile Open open = new Open("", "");

	private int refused;

	/**
	 * @param competition the address of its page
	 */
	Followers(Loopback crowd, String competition) {
		this.crowd = crowd;
		this.competition = competition;
	}

	/** Let so many come within three seconds; every fourth has no stream. */
	void gather(int followers) {
		for (int i = 0; i < followers; i++) {
			Follower follower = new Follower(i % 4 != 3);
			this.all.add(follower);
			this.crowd.after(this.random.nextInt(3000), follower::begin);
		}
	}

	/** Let everybody open the page of that segment. */
	void turnTo(String segment, String page) {
		this.open = new Open(segment, page);
	}

	/** How many have that standing of the segment on their screens, or a newer one. */
	long having(int version) {
		return this.all.stream().filter((each) -> each.opened.equals(this.open) && each.shown >= version).count();
	}

	/** How many of the answers were neither a page nor the word that nothing moved. */
	int refused() {
		return this.refused;
	}

	/**
	 * How long each follower took to see a standing, or a newer one.
	 * @param closes when the closing of cards began, by segment and version
	 */
	List<Long> delays(boolean streams, Map<String, Long> closes) {
		List<Long> delays = new ArrayList<>();
		for (Seen each : this.seen) {
			for (int version = each.known + 1; each.streams == streams && version <= each.version; version++) {
				Long began = closes.get(each.segment + " " + version);
				if (began != null) {
					delays.add(each.at - began);
				}
			}
		}
		return delays;
	}

	/** The page that everybody looks at. */
	private record Open(String segment, String page) {
	}

	/** Somebody who had one standing and now has another. */
	private record Seen(String segment, int known, int version, boolean streams, long at) {
	}

	private final class Follower {

		private final boolean mayStream;

		private boolean streams;

		private int within;

		private int retry = 2000;

		private String tag = "";

		private Open opened = new Open("", "");

		/** The newest standing that it was told of, its moment, and what is on the screen. */
		private int told;

		private String moment = "";

		private int shown;

		private boolean fetching;

		Follower(boolean mayStream) {
			this.mayStream = mayStream;
		}

		void begin() {
			if (this.mayStream) {
				listen();
			}
			else {
				look();
			}
		}

		private void listen() {
			this.streams = true;
			Followers.this.crowd.get(Followers.this.competition + "/signals", "Connection: close\r\n", (heard) -> {
				this.retry = number(RETRY, heard, this.retry);
				this.within = number(WITHIN, heard, this.within);
				hear(heard);
			}, (answer) -> {
				if (answer.isEmpty() || answer.contains("event-stream")) {
					Followers.this.crowd.after(this.retry, this::listen);
				}
				else {
					this.streams = false;
					look();
				}
			});
		}

		private void look() {
			String known = this.tag.isEmpty() ? "" : "If-None-Match: " + this.tag + "\r\n";
			Followers.this.crowd.get(Followers.this.competition + "/moments", known + "Connection: close\r\n", (heard) -> {
			}, (answer) -> {
				if (answer.startsWith("HTTP/1.1 200")) {
					Matcher named = TAG.matcher(answer);
					this.tag = named.find() ? named.group(1) : "";
					hear(answer);
				}
				else if (!answer.startsWith("HTTP/1.1 304")) {
					Followers.this.refused++;
				}
				if (this.mayStream && answer.contains("Rink-Streams: open") && Followers.this.random.nextInt(4) == 0) {
					listen();
				}
				else {
					double wait = number(WAIT, answer, 5) * (0.8 + 0.4 * Followers.this.random.nextDouble());
					Followers.this.crowd.after((long) (wait * 1000), this::look);
				}
			});
		}

		private void hear(String text) {
			Open now = Followers.this.open;
			if (!now.equals(this.opened)) {
				this.opened = now;
				this.told = 0;
				this.shown = 0;
			}
			Matcher signal = SIGNAL.matcher(text);
			while (signal.find()) {
				if (signal.group(1).equals(now.segment()) && Integer.parseInt(signal.group(3)) >= this.told) {
					this.told = Integer.parseInt(signal.group(3));
					this.moment = signal.group(2);
				}
			}
			fetchSoon(this.streams ? this.within : 0);
		}

		private void fetchSoon(int within) {
			if (!this.fetching && this.told > this.shown) {
				this.fetching = true;
				Followers.this.crowd.after(Followers.this.random.nextInt(within + 1), this::fetch);
			}
		}

		private void fetch() {
			Open asked = this.opened;
			int version = this.told;
			Followers.this.crowd.get(asked.page() + "?part=live&moment=" + this.moment,
					"Accept-Encoding: gzip\r\nConnection: close\r\n", (heard) -> {
					}, (answer) -> {
						this.fetching = false;
						boolean good = answer.startsWith("HTTP/1.1 200");
						if (good && asked.equals(this.opened)) {
							Followers.this.seen.add(new Seen(asked.segment(), this.shown, version, this.streams, System.nanoTime()));
							this.shown = version;
						}
						Followers.this.refused += good ? 0 : 1;
						fetchSoon(good ? this.within : 5000);
					});
		}

	}

	private static int number(Pattern pattern, String text, int otherwise) {
		Matcher matcher = pattern.matcher(text);
		@Nullable String last = null;
		while (matcher.find()) {
			last = matcher.group(1);
		}
		return (last != null) ? Integer.parseInt(last) : otherwise;
	}

}
