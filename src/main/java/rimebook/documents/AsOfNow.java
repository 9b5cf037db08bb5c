package rimebook.documents;

import java.time.Clock;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.springframework.stereotype.Component;

import rimebook.results.RuleSetNames;

/** Makes documents that have no version, as things stand now. */
@Component
class AsOfNow {

	private final RuleSetNames rules;

	private final Clock clock;

	AsOfNow(RuleSetNames rules, Clock clock) {
		this.rules = rules;
		this.clock = clock;
	}

	/**
	 * A document as of now, with a fingerprint of what it says.
	 * @param about the things that it tells of, besides its event and segment
	 */
	DocumentContent of(DocumentContent.Subject at, Object body, Stream<UUID> about) {
		Set<UUID> things = about.collect(Collectors.toSet());
		things.add(at.event().id().value());
		if (at.segment() != null) {
			things.add(at.segment().id().value());
		}
		return new DocumentContent(at,
				new DocumentContent.Edition(0, DocumentContent.Trust.AS_OF, this.clock.instant(), Fingerprint.of(body)),
				this.rules.of(at.event()), body, things);
	}

}
