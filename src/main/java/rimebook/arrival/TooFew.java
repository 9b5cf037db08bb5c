package rimebook.arrival;

import rimebook.entries.EntryId;

/**
 * A team for which fewer are to skate than its event asks for. What follows is for the
 * referee to decide.
 *
 * @param skating how many of its roster are to skate; once somebody of the team was seen
 * at the door, only those who were
 * @param least how many the event asks for
 * @param follows what the rulebook in force lets follow, as it was written down for the
 * event; empty where it was not
 */
public record TooFew(EntryId entry, long skating, int least, String follows) {
}
