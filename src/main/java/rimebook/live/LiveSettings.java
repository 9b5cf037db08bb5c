package rimebook.live;

import java.time.Duration;

import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;

/**
 * How closely the public side follows.
 *
 * @param look how often a followed competition is looked at for changes that nobody told
 * this process about
 * @param keep how long rendered bytes are used before they are made afresh, changed or
 * not
 * @param heartbeat how often a follower without news hears a sign of life
 * @param patience how long a follower may leave what was sent to it unread
 * @param stay how long one connection lasts before the browser makes a new one
 * @param streams how many connections may be open at once; whoever comes then polls. Left
 * out (0), an eighth of the heap has room for them
 * @param streamsPerAddress the same from one address; left out (0), a quarter of all,
 * since a hall full of people often has one address
 * @param poll how long a page that polls waits between two looks, at least
 * @param pollsASecond how many polls a second are answered before pages are told to wait
 * longer
 * @param quiet after how long without any sign of life a page says so and begins anew
 */
@ConfigurationProperties("rimebook.live")
record LiveSettings(@DefaultValue("1s") Duration look, @DefaultValue("5s") Duration keep,
		@DefaultValue("15s") Duration heartbeat, @DefaultValue("30s") Duration patience,
		@DefaultValue("30m") Duration stay, @DefaultValue("0") int streams, @DefaultValue("0") int streamsPerAddress,
		@DefaultValue("3s") Duration poll, @DefaultValue("3000") int pollsASecond,
		@DefaultValue("35s") Duration quiet) {

	/** What one open connection takes, with room to spare; measured by a benchmark. */
	private static final int STREAM_BYTES = 24 * 1024;

	LiveSettings {
		streams = (streams > 0) ? streams : streamsIn(Runtime.getRuntime().maxMemory());
		streamsPerAddress = (streamsPerAddress > 0) ? streamsPerAddress : Math.max(1, streams / 4);
	}

	/** How many connections an eighth of a heap has room for. */
	static int streamsIn(long heap) {
		return (int) Math.min(Integer.MAX_VALUE, Math.max(1, heap / 8 / STREAM_BYTES));
	}

}
