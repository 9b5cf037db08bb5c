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
 */
@ConfigurationProperties("rimebook.live")
record LiveSettings(@DefaultValue("1s") Duration look, @DefaultValue("5s") Duration keep,
		@DefaultValue("15s") Duration heartbeat, @DefaultValue("30s") Duration patience,
		@DefaultValue("30m") Duration stay) {

}
