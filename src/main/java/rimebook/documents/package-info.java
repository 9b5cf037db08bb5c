/**
 * What is printed: documents on paper about a competition, each with its source, its
 * version and a fingerprint by which whoever holds the sheet can compare it.
 */
@ApplicationModule(allowedDependencies = { "archive", "audit", "results", "published", "protests", "review", "rulings",
		"timetable", "timetable :: plan", "draw", "panels", "performances", "entries", "competition", "tabulation",
		"pages", "shared", "wording" })
@NullMarked
package rimebook.documents;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
