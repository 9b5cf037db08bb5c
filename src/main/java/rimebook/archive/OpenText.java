package rimebook.archive;

import java.util.List;
import java.util.Map;
import java.util.Set;

import tools.jackson.databind.json.JsonMapper;

/** A text of JSON without what the public archive lacks. */
final class OpenText {

	private static final JsonMapper JSON = JsonMapper.builder().build();

	private OpenText() {
	}

	/**
	 * Take members out: {@code officials} goes, of {@code panel.notes} the list is left
	 * empty.
	 * @return the same bytes where there is nothing to take out
	 */
	static String of(String text, Set<String> hidden) {
		TableRow members = JSON.readValue(text, TableRow.class);
		long taken = hidden.stream().filter((name) -> isTaken(members, name.split("\\."))).count();
		return (taken > 0) ? JSON.writeValueAsString(members) : text;
	}

	private static boolean isTaken(TableRow members, String[] name) {
		if (name.length == 1) {
			return members.remove(name[0]) != null;
		}
		if (!(members.get(name[0]) instanceof Map<?, ?> member && member.get(name[1]) instanceof List<?> list)
				|| list.isEmpty()) {
			return false;
		}
		list.clear();
		return true;
	}

}
