package rimebook.documents;

import java.util.List;

import rimebook.competition.EventView;

/** Where the documents of one kind come from. */
interface DocumentSource {

	DocumentKind kind();

	/** Those that there are now for an event, in the order of its segments. */
	List<DocumentRef> offered(EventView event);

	/**
	 * Read one.
	 * @throws rimebook.shared.NotFoundException if there is none
	 * @throws rimebook.shared.RuleViolationException if it cannot be printed yet
	 */
	DocumentContent read(DocumentRef ref);

}
