package rimebook.entries;

/**
 * A team as it is written down, to be mended.
 *
 * @param version give it back with a change, so that nobody overwrites another's
 */
public record KnownTeam(TeamView team, int version) {

}
