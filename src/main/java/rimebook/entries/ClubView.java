package rimebook.entries;

/** A club and the town it is at home in. */
public record ClubView(ClubId id, String name, String town) {

}
