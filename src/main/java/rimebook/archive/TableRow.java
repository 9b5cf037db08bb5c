package rimebook.archive;

import java.util.LinkedHashMap;

import org.jspecify.annotations.Nullable;

/**
 * A row of a table, or any other object of JSON, by the names of its columns in their
 * order.
 */
final class TableRow extends LinkedHashMap<String, @Nullable Object> {

	private static final long serialVersionUID = 1L;

}
