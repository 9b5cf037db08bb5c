/**
 * The pages on which people sign in, set up the house, and are given their roles.
 */
@NullMarked
package rimebook.accounts.web;

import org.jspecify.annotations.NullMarked;
