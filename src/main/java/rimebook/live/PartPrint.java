package rimebook.live;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

import org.jspecify.annotations.Nullable;

/**
 * What a moving part says, by digests: enough to tell what of a later one it says too,
 * and a tenth of its size.
 *
 * @param tag of the part
 * @param contents of each row, and of each thing that opens, by its identity
 * @param lines of what opens, by its identity: of each line its cells, {@code null} where
 * a cell holds lines itself
 */
record PartPrint(String tag, Map<String, UUID> contents, Map<String, List<List<@Nullable UUID>>> lines) {

	/** Bytes that one digest takes, with what refers to it. */
	private static final int EACH = 40;

	/**
	 * What a part says.
	 * @param text the part
	 * @param pieces what can be left out of it
	 */
	static PartPrint of(String tag, String text, List<MovingPart.Piece> pieces) {
		MessageDigest digest = sha256();
		Map<String, UUID> contents = new HashMap<>();
		Map<String, List<List<@Nullable UUID>>> lines = new HashMap<>();
		pieces.forEach((piece) -> {
			contents.put(piece.identity(), digest(digest, text.substring(piece.from(), piece.to())));
			if (!piece.lines().isEmpty()) {
				lines.put(piece.identity(), piece.lines().stream().map((line) -> cells(digest, text, line)).toList());
			}
		});
		return new PartPrint(tag, Map.copyOf(contents), Map.copyOf(lines));
	}

	private static List<@Nullable UUID> cells(MessageDigest digest, String text, MovingPart.Line line) {
		return line.cells()
			.stream()
			.<@Nullable UUID>map(
					(cell) -> cell.simple() ? digest(digest, text.substring(cell.from(), cell.to())) : null)
			.toList();
	}

	/** Tell whether an earlier part says the same under that identity. */
	boolean isSame(String identity, PartPrint earlier) {
		UUID own = this.contents.get(identity);
		return own != null && own.equals(earlier.contents.get(identity));
	}

	/** How many cells each line of what opens begins with that it began with earlier. */
	int[] kept(String identity, PartPrint earlier) {
		List<List<@Nullable UUID>> now = this.lines.getOrDefault(identity, List.of());
		List<List<@Nullable UUID>> before = earlier.lines.getOrDefault(identity, List.of());
		int[] kept = new int[now.size()];
		for (int line = 0; line < Math.min(now.size(), before.size()); line++) {
			kept[line] = same(now.get(line), before.get(line));
		}
		return kept;
	}

	private static int same(List<@Nullable UUID> now, List<@Nullable UUID> before) {
		int same = 0;
		while (same < Math.min(now.size(), before.size()) && isSame(now.get(same), before.get(same))) {
			same++;
		}
		return same;
	}

	private static boolean isSame(@Nullable UUID one, @Nullable UUID other) {
		return one != null && one.equals(other);
	}

	/** How many bytes it takes, about. */
	long size() {
		return EACH * (this.contents.size()
				+ this.lines.values().stream().flatMap(List::stream).mapToLong((line) -> 1 + line.size()).sum());
	}

	private static UUID digest(MessageDigest digest, String piece) {
		ByteBuffer bytes = ByteBuffer.wrap(digest.digest(piece.getBytes(StandardCharsets.UTF_8)));
		return new UUID(bytes.getLong(), bytes.getLong());
	}

	private static MessageDigest sha256() {
		try {
			return MessageDigest.getInstance("SHA-256");
		}
		catch (NoSuchAlgorithmException ex) {
			throw new IllegalStateException("Every Java has SHA-256", ex);
		}
	}

}
