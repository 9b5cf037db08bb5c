package rimebook.web;

import java.util.Set;

import rimebook.accounts.Role;
import rimebook.pages.Waiting;

/**
 * Something that waits, as one person sees it.
 *
 * @param whose the roles that may do it, without the administrator
 * @param mine whether it is this person's to do
 */
record WaitingLine(Waiting what, Set<Role> whose, boolean mine) {
}
