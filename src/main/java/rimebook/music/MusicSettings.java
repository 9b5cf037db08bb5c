package rimebook.music;

import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;
import org.springframework.util.unit.DataSize;

/**
 * What a rink may set for music.
 *
 * @param most the largest file that is taken; 30 MB hold four and a half minutes as they
 * come from a studio, without loss and in two channels. Larger ones than
 * {@link #MOST_OF_ALL} are stopped at the door whatever is set here
 */
@ConfigurationProperties("rimebook.music")
record MusicSettings(@DefaultValue("30MB") DataSize most) {

	/** What the door lets in on the way to music. */
	static final DataSize MOST_OF_ALL = DataSize.ofMegabytes(30);

	MusicSettings {
		if (most.compareTo(MOST_OF_ALL) > 0) {
			throw new IllegalArgumentException("rimebook.music.most is " + most + "; at most " + MOST_OF_ALL);
		}
	}

}
