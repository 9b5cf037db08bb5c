/**
 * The public side: pages, board, JSON and signals for whoever follows a competition.
 * Reads published versions only and never writes. What a visitor is sent is rendered once
 * and kept as bytes until something changes.
 */
@ApplicationModule(allowedDependencies = { "audit", "published", "results", "protests", "rulings", "timetable",
		"timetable :: plan", "draw", "entries", "competition", "letters", "tabulation", "pages", "shared", "wording" })
@NullMarked
package rimebook.live;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
