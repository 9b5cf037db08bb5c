package rimebook.entries;

/**
 * A team of a club.
 *
 * @param spokenAs how the announcer says the name; empty when as it is written
 */
public record TeamView(TeamId id, String name, ClubView club, String spokenAs) {

}
