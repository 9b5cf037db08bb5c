package rimebook.archive;

import java.util.List;

import rimebook.competition.CompetitionId;

/**
 * A module that has documents of a competition: a bean of this adds them to each archive
 * that the service makes. Documents are kept in the archive as they are and go into no
 * database, so they need no place in one.
 */
public interface ArchivedDocuments {

	/**
	 * The documents of a competition as it is now, to be made one after the other; none
	 * twice with the same name.
	 * @param variant the public one may hold nothing but what is published
	 */
	List<ArchivedDocument> of(CompetitionId competition, Variant variant);

}
