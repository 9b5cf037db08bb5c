package rimebook.draw;

import java.util.List;

import org.jspecify.annotations.Nullable;

/**
 * What may be drawn for a segment now.
 *
 * @param methods the methods that fit the segment, the usual one first
 * @param groupMaximum the group maximum to start from
 * @param field how many would start, 0 if that is not known yet
 * @param refusal why nothing can be drawn now, {@code null} if it can
 */
public record DrawOffer(List<DrawMethod> methods, int groupMaximum, int field, @Nullable String refusal) {

	public DrawOffer {
		methods = List.copyOf(methods);
	}

}
