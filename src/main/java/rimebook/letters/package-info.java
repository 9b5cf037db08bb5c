/**
 * Letters to teams: what they say, to whom they go and in which language, by electronic
 * mail or on paper, and what became of each. Knows entries and nothing of people, music
 * or times: whoever has something to tell in a letter implements
 * {@link rimebook.letters.LetterFacts}. Knows nothing of the ice.
 */
@ApplicationModule(allowedDependencies = { "entries", "competition", "pages", "shared", "wording" })
@NullMarked
package rimebook.letters;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
