/**
 * Cards on paper, keyed in by two people of whom neither sees what the other typed;
 * declares what a kind of paper card has to answer.
 */
@ApplicationModule(allowedDependencies = { "performances", "panels", "competition", "shared", "wording" })
@NullMarked
package rimebook.paper;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
