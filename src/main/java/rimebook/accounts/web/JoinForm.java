package rimebook.accounts.web;

import org.jspecify.annotations.Nullable;

/** A seat's code as typed or scanned. */
record JoinForm(@Nullable String code) {
}
